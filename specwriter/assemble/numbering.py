"""Numbers of parts, clauses and tables, and references to them in a second pass."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from typing import TypeVar

from specwriter.assemble.clause import LibraryClause
from specwriter.assemble.counting import counted
from specwriter.assemble.document import (
    Block,
    Clause,
    Figure,
    ListItem,
    Numbering,
    Part,
    Run,
    Table,
)
from specwriter.assemble.front_matter import fault_at
from specwriter.assemble.outline import Outline
from specwriter.diagnostic import Fault

_Numbered = TypeVar("_Numbered", bound=Block)


@dataclass(frozen=True, slots=True, kw_only=True)
class Draft:
    """A chosen clause with its blocks, not yet numbered."""

    source: LibraryClause
    blocks: tuple[Block, ...]


def numbered(
    outline: Outline, numbering: Numbering, drafts: Sequence[Draft]
) -> tuple[tuple[Part, ...], list[Fault]]:
    """The parts with all numbers set; faults for references that lead nowhere."""
    parts = _with_blocks_numbered(_parts(outline, numbering, drafts), numbering)
    clauses = [clause for part in parts for clause in part.clauses]
    # Word prints a reference without the full stop behind a number.
    numbers = {clause.id: clause.number.rstrip(".") for clause in clauses}
    blocks = [block for clause in clauses for block in clause.blocks]
    numbers |= {b.id: str(b.number) for b in blocks if isinstance(b, Table | Figure)}
    faults = [*_lost(drafts, numbers), *_doubled(drafts)]
    return tuple(_resolved(part, numbers) for part in parts), faults


def _parts(outline: Outline, numbering: Numbering, drafts: Sequence[Draft]) -> list[Part]:
    parts = []
    for index, heading in enumerate(outline.parts, start=1):
        own = [draft for draft in drafts if _part_of(draft, outline) == index - 1]
        clauses = tuple(
            Clause(
                id=draft.source.id,
                number=counted(numbering.clause, {"part": index, "clause": number}),
                title=draft.source.title,
                blocks=draft.blocks,
            )
            for number, draft in enumerate(own, start=1)
        )
        parts.append(
            Part(
                id=heading.id,
                number=counted(numbering.part, {"part": index}),
                title=heading.title,
                clauses=clauses or (_not_used(outline, numbering, heading.id, index),),
            )
        )
    return parts


def _part_of(draft: Draft, outline: Outline) -> int:
    place = outline.place_of(draft.source)
    return place[0] if place else len(outline.parts)


def _not_used(outline: Outline, numbering: Numbering, part: str, index: int) -> Clause:
    number = counted(numbering.clause, {"part": index, "clause": 1})
    return Clause(id=f"{part}.not_used", number=number, title=outline.not_used, blocks=())


def _with_blocks_numbered(parts: list[Part], numbering: Numbering) -> list[Part]:
    """Tables and figures are counted through the document, list items in their lists."""
    count = {Table: 0, Figure: 0}
    items = [0, 0]
    made = []
    for part in parts:
        clauses = []
        for clause in part.clauses:
            blocks: list[Block] = []
            for block in clause.blocks:
                if isinstance(block, Table | Figure):
                    count[type(block)] += 1
                    block = replace(block, number=count[type(block)])
                elif isinstance(block, ListItem):
                    items[block.level] = 1 if block.starts else items[block.level] + 1
                    pattern = numbering.subitem if block.level else numbering.item
                    block = replace(block, label=counted(pattern, {"item": items[block.level]}))
                blocks.append(block)
            clauses.append(replace(clause, blocks=tuple(blocks)))
        made.append(replace(part, clauses=tuple(clauses)))
    return made


def _lost(drafts: Sequence[Draft], numbers: Mapping[str, str]) -> list[Fault]:
    lost = dict.fromkeys(
        (draft.source, run.target)
        for draft in drafts
        for block in draft.blocks
        for run in _runs(block)
        if run.kind == "reference" and run.target not in numbers
    )
    return [
        fault_at(
            clause.file,
            clause.body_line,
            1,
            f"this clause refers to '{target}', which is not in the document of this job",
            "put the reference inside {% if %} with the condition of that clause",
        )
        for clause, target in lost
    ]


def _doubled(drafts: Sequence[Draft]) -> list[Fault]:
    seen: set[str] = set()
    faults = []
    for draft in drafts:
        for block in draft.blocks:
            if isinstance(block, Table | Figure) and block.id in seen:
                says = f"'{block.id}' stands in the document twice"
                todo = "give one of them another name"
                faults.append(fault_at(draft.source.file, draft.source.body_line, 1, says, todo))
            elif isinstance(block, Table | Figure):
                seen.add(block.id)
    return faults


def _runs(block: Block) -> Sequence[Run]:
    if isinstance(block, Table):
        return [run for row in block.rows for cell in row for run in cell]
    return () if isinstance(block, Figure) else block.runs


def _resolved(part: Part, numbers: Mapping[str, str]) -> Part:
    clauses = tuple(
        replace(clause, blocks=tuple(_with_numbers(block, numbers) for block in clause.blocks))
        for clause in part.clauses
    )
    return replace(part, clauses=clauses)


def _with_numbers(block: _Numbered, numbers: Mapping[str, str]) -> _Numbered:
    def fill(runs: Sequence[Run]) -> tuple[Run, ...]:
        return tuple(
            replace(run, text=numbers.get(run.target, "")) if run.kind == "reference" else run
            for run in runs
        )

    if all(run.kind != "reference" for run in _runs(block)):
        return block
    if isinstance(block, Table):
        return replace(block, rows=tuple(tuple(fill(cell) for cell in row) for row in block.rows))
    return block if isinstance(block, Figure) else replace(block, runs=fill(block.runs))
