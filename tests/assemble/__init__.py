"""Clauses made in the tests themselves, so that no test rests on the wording of the library."""

from __future__ import annotations

from specwriter.assemble import Document, assemble
from specwriter.assemble.clause import LibraryClause, read_clause
from specwriter.assemble.document import Block, Figure, Run, Table
from specwriter.assemble.library import Library
from specwriter.assemble.outline import Outline, OutlinePart, single
from specwriter.model import Job

OUTLINE = Outline(
    parts=(
        OutlinePart(id="description", title="Description"),
        OutlinePart(id="materials", title="Materials"),
        OutlinePart(id="construction", title="Construction Requirements"),
    )
)


def clause(body: str, name: str = "common.one", **front: str) -> LibraryClause:
    keys = {"id": name, "title": "One", "part": "construction", "order": "10", **front}
    text = "---\n" + "".join(f"{k}: {v}\n" for k, v in keys.items()) + f"---\n{body}\n"
    made, faults = read_clause(text, f"clauses/{name.replace('.', '/')}.md", name)
    assert made is not None, faults
    return made


def library(*clauses: LibraryClause) -> Library:
    return Library(clauses=clauses, formats=single(OUTLINE))


def document(job: Job, *bodies: str, **front: str) -> Document:
    """The document of a job whose library has one clause for each body."""
    made = [clause(body, f"common.c{i}", **front) for i, body in enumerate(bodies)]
    return assemble(job, library(*made))


def blocks(job: Job, body: str, **front: str) -> tuple[Block, ...]:
    return document(job, body, **front).parts[2].clauses[0].blocks


def shown(runs: tuple[Run, ...]) -> str:
    """Runs in one line: <kind:text> for whatever is not plain."""
    return "".join(r.text if r.kind == "plain" else f"<{r.kind}:{r.text}>" for r in runs)


def texts(job: Job, body: str, **front: str) -> list[str]:
    """The blocks of a clause, one line each; table rows as cell | cell."""
    lines = []
    for block in blocks(job, body, **front):
        if isinstance(block, Table):
            lines.append(f"Table {block.number} {block.caption}: " + " | ".join(block.header))
            lines += [" | ".join(shown(cell) for cell in row) for row in block.rows]
        elif isinstance(block, Figure):
            lines.append(f"Figure {block.number} {block.caption}: {block.description}")
        else:
            lines.append(f"{getattr(block, 'label', '')} {shown(block.runs)}".strip())
    return lines


def rows(table: Table) -> list[list[str]]:
    return [[shown(cell) for cell in row] for row in table.rows]
