"""Parts, clauses and tables of the memo in the types of the document."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import replace

from specwriter.assemble.document import Block, Clause, Paragraph, Part, Run, Table

Section = tuple[str, Sequence[Block]]
"""A title and what stands under it."""


def text(content: str) -> Paragraph:
    """A paragraph of plain text."""
    return Paragraph(runs=(Run(text=content),))


def table(
    id: str,
    caption: str,
    header: tuple[str, ...],
    rows: Iterable[Sequence[str]],
) -> Table:
    """A table of plain texts; it gets its number with the whole memo."""
    cells = tuple(tuple((Run(text=cell),) if cell else () for cell in row) for row in rows)
    return Table(id=id, number=0, caption=caption, header=header, rows=cells)


def numbered(parts: Iterable[tuple[str, Sequence[Section]]]) -> tuple[Part, ...]:
    """Parts and clauses counted through, and the tables of the whole memo."""
    made, tables = [], 0
    for place, (title, sections) in enumerate(parts, 1):
        clauses = []
        for number, (name, blocks) in enumerate(sections, 1):
            counted: list[Block] = []
            for block in blocks:
                if isinstance(block, Table):
                    tables += 1
                    block = replace(block, number=tables, id=f"memo_table_{tables}")
                counted.append(block)
            clauses.append(
                Clause(
                    id=f"memo.{place}.{number}",
                    number=f"{place}.{number}",
                    title=name,
                    blocks=tuple(counted),
                )
            )
        made.append(
            Part(id=f"memo_{place}", number=f"{place}.", title=title, clauses=tuple(clauses))
        )
    return tuple(made)
