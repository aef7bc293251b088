"""The documents of every example, as the tree has them and as Word files."""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.assemble import Document, assemble, load_library
from specwriter.assemble.document import Figure, ListItem, Run, Table
from specwriter.render import render_docx
from tests.render.word import HYPHENS
from tests.support import EXAMPLES, job

NAMES = sorted(path.parent.name for path in EXAMPLES.glob("*/job.yaml"))
MADE = {name: assemble(job(name), load_library()) for name in NAMES}
FILES = {name: render_docx(made) for name, made in MADE.items()}


def text(runs: tuple[Run, ...]) -> str:
    return "".join(run.text for run in runs)


def lines(made: Document, *, numbered: bool = False) -> Iterator[str]:
    """Title, headings, text and cells of the tree from the first part on, in reading order.

    With its number before each part, clause and item, where they are to be ``numbered``.
    """
    for part in made.parts:
        yield f"{part.number} {part.title}" if numbered else part.title
        for clause in part.clauses:
            yield f"{clause.number} {clause.title}" if numbered else clause.title
            for block in clause.blocks:
                if isinstance(block, Figure):
                    yield f"Figure {block.number}. {block.caption}"
                elif isinstance(block, Table):
                    yield f"Table {block.number}. {block.caption}"
                    yield from block.header
                    yield from (text(cell) for row in block.rows for cell in row)
                elif isinstance(block, ListItem) and numbered:
                    yield f"{block.label} {text(block.runs)}"
                else:
                    yield text(block.runs)
    yield made.closing


def squeezed(found: Iterator[str] | list[str]) -> list[str]:
    """The lines without what a reader may show in another way: spaces, which hyphen."""
    flat = (" ".join(each.split()).translate(HYPHENS) for each in found)
    return [each for each in flat if each]
