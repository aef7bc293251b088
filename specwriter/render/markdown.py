"""Document tree → CommonMark with pipe tables. Numbers stay text; nothing in a job is markup."""

from __future__ import annotations

import re
from collections.abc import Iterable

from specwriter.assemble.document import (
    Block,
    Document,
    Figure,
    ListItem,
    Note,
    Paragraph,
    Run,
    Table,
)
from specwriter.render.front import (
    FRONT_PURPOSE,
    FRONT_TITLE,
    front_sections,
    lead_in_runs,
    masthead,
)

_SPECIAL = re.compile(r"([\\`*_\[\]<>|~&#])")
_LEADING = re.compile(r"^(\s*)([-+](?=\s|$)|[-=](?=[-=\s]*$)|\d+(?=[.)](?:\s|$)))")
_STYLES = {"strong": "**", "emphasis": "*", "blank": "**"}


def render_markdown(document: Document) -> str:
    """The provision as CommonMark, ending in one line break."""
    front = _front(document) if document.front else ()
    blocks = [*front, *_title(document)]
    for part in document.parts:
        blocks.append(f"## {_signs(part.number)} {escaped(part.title)}")
        for clause in part.clauses:
            blocks.append(f"### {_signs(clause.number)} {escaped(clause.title)}")
            blocks += [_block(block) for block in clause.blocks]
    if document.closing:
        blocks.append(f"**{escaped(document.closing)}**")
    return "\n\n".join(blocks) + "\n"


def escaped(text: str) -> str:
    """Text that CommonMark reads back as the same characters, at the start of a line too."""
    return _LEADING.sub(_guarded, _signs(text))


def _signs(text: str) -> str:
    """Text that CommonMark reads back as the same characters within a line."""
    return _SPECIAL.sub(r"\\\1", " ".join(text.split("\n")))


def _guarded(match: re.Match[str]) -> str:
    """A list marker at the start of a line: the sign, or the full stop behind the number."""
    space, mark = match.groups()
    return f"{space}{mark}\\" if mark.isdigit() else f"{space}\\{mark}"


def _front(document: Document) -> Iterable[str]:
    yield f"# {FRONT_TITLE}"
    yield FRONT_PURPOSE
    for section in front_sections(document):
        yield f"## {section.title}"
        yield "\n".join(f"- {_runs(point)}" for point in section.points)
    yield "---"


def _title(document: Document) -> Iterable[str]:
    yield escaped(document.agency)
    yield f"# {escaped(document.title)}"
    if document.subtitle:
        yield f"*{escaped(document.subtitle)}*"
    if document.status:
        yield f"**{escaped(document.status)}**"
    yield "\n".join(f"- {label}: {escaped(value)}" for label, value in masthead(document))
    if document.lead_in:
        yield _runs(lead_in_runs(document))
    for block in document.title_blocks:
        yield _block(block)


def _block(block: Block) -> str:
    match block:
        case Paragraph():
            return _runs(block.runs)
        case ListItem():
            # Not a Markdown list: CommonMark has no lettered ones, and the label is the tree's.
            return "&nbsp;" * (6 * block.level) + f"{block.label} {_runs(block.runs)}"
        case Note():
            return f"> {_runs(block.runs)}"
        case Table():
            return _table(block)
        case Figure():
            # Markdown holds no drawing: the description gives every dimension of it in words.
            title = f"**Figure {block.number}. {escaped(block.caption)}**"
            return f"{title}\n\n{escaped(block.description)}"


def _table(table: Table) -> str:
    rows = [
        "| " + " | ".join(map(escaped, table.header)) + " |",
        "|" + " --- |" * len(table.header),
    ]
    rows += ["| " + " | ".join(_runs(cell) for cell in row) + " |" for row in table.rows]
    number = f"Table {table.number}. " if table.number else ""
    return f"**{number}{escaped(table.caption)}**\n\n" + "\n".join(rows)


def _runs(runs: tuple[Run, ...]) -> str:
    text = "".join(_run(run) for run in runs)
    return _LEADING.sub(_guarded, text)


def _run(run: Run) -> str:
    inner = _SPECIAL.sub(r"\\\1", " ".join(run.text.split("\n")))
    # Marks must touch the text: CommonMark does not read "** a**" as strong.
    mark, core = _STYLES.get(run.kind, ""), inner.strip()
    if not (mark and core):
        return inner
    start = inner.index(core)
    return inner[:start] + mark + core + mark + inner[start + len(core) :]
