"""Document tree → one self-contained HTML page: no script, no font, nothing fetched."""

from __future__ import annotations

import re
from collections.abc import Iterable
from html import escape
from pathlib import Path

from specwriter.assemble.document import (
    Block,
    Clause,
    Document,
    Figure,
    ListItem,
    Note,
    Paragraph,
    Part,
    Run,
    Table,
)
from specwriter.render.figure import figure_svg
from specwriter.render.front import (
    FRONT_PURPOSE,
    FRONT_TITLE,
    front_sections,
    lead_in_runs,
    masthead,
)

_NUMBER = re.compile(r"[\d.,/]*\d-\d[-\d.,/]*")
"""A number with a hyphen inside, such as 1-1/2 or 08-26: a browser ends a line behind that."""

_TAGS = {"strong": "strong", "emphasis": "em"}


def render_html(document: Document) -> str:
    """The provision as one page that reads on a telephone and prints on the paper of the house."""
    style = Path(__file__).with_name("page.css").read_text(encoding="utf-8")
    style = style.replace("size: letter", f"size: {document.page}")
    lines = [
        "<!DOCTYPE html>",
        '<html lang="en">',
        "<head>",
        '<meta charset="utf-8">',
        '<meta name="viewport" content="width=device-width, initial-scale=1">',
        f"<title>{escape(document.title)}</title>",
        f"<style>\n{style}</style>",
        "</head>",
        "<body>",
        "<main>",
        *(_front(document) if document.front else ()),
        *_title(document),
        *(line for part in document.parts for line in _part(part)),
        *_text("p", document.closing, "closing"),
        "</main>",
        "</body>",
        "</html>",
    ]
    return "\n".join(lines) + "\n"


def _text(tag: str, text: str, name: str) -> Iterable[str]:
    """An element of one text; nothing when there is no text."""
    if text:
        yield f'<{tag} class="{name}">{escape(text)}</{tag}>'


def _front(document: Document) -> Iterable[str]:
    yield '<aside class="front" aria-labelledby="front-sheet">'
    yield f'<h2 id="front-sheet">{FRONT_TITLE}</h2>'
    yield f"<p>{FRONT_PURPOSE}</p>"
    for section in front_sections(document):
        yield f"<h3>{section.title}</h3>"
        yield "<ul>"
        yield from (f"<li>{_runs(point)}</li>" for point in section.points)
        yield "</ul>"
    yield "</aside>"


def _title(document: Document) -> Iterable[str]:
    yield "<header>"
    yield from _text("p", document.agency, "agency")
    yield f"<h1>{escape(document.title)}</h1>"
    yield from _text("p", document.subtitle, "subtitle")
    yield '<dl class="masthead">'
    for label, value in masthead(document):
        yield f"<dt>{label}</dt><dd>{escape(value)}</dd>"
    yield "</dl>"
    yield from _text("p", document.status, "status")
    yield "</header>"
    if document.lead_in:
        yield f"<p>{_runs(lead_in_runs(document))}</p>"
    for block in document.title_blocks:
        yield from _block(block)


def _part(part: Part) -> Iterable[str]:
    yield f'<section id="part-{escape(part.id)}">'
    yield f'<h2><span class="number">{escape(part.number)}</span> {escape(part.title)}</h2>'
    for clause in part.clauses:
        yield from _clause(clause)
    yield "</section>"


def _clause(clause: Clause) -> Iterable[str]:
    yield f'<section id="{_anchor(clause.id)}">'
    yield f'<h3><span class="number">{escape(clause.number)}</span> {escape(clause.title)}</h3>'
    for block in clause.blocks:
        yield from _block(block)
    yield "</section>"


def _block(block: Block) -> Iterable[str]:
    match block:
        case Paragraph():
            yield f"<p>{_runs(block.runs)}</p>"
        case ListItem():
            # Not <ol>: the label belongs to the text and is copied with it.
            yield (
                f'<div class="item level-{block.level}"><span>{escape(block.label)}</span> '
                f"<div>{_runs(block.runs)}</div></div>"
            )
        case Note():
            yield f'<p class="note" role="note">{_runs(block.runs)}</p>'
        case Table():
            yield from _table(block)
        case Figure():
            yield f'<figure id="{_anchor(block.id)}">'
            yield f'<div class="scroll">{figure_svg(block)}</div>'
            yield f"<figcaption>Figure {block.number}. {escape(block.caption)}</figcaption>"
            yield "</figure>"


def _table(table: Table) -> Iterable[str]:
    yield f'<div class="scroll"><table id="{_anchor(table.id)}">'
    number = f"Table {table.number}. " if table.number else ""
    yield f"<caption>{number}{escape(table.caption)}</caption>"
    if table.widths:
        shares = [100 * width / sum(table.widths) for width in table.widths]
        columns = "".join(f'<col style="width: {share:.1f}%">' for share in shares)
        yield f"<colgroup>{columns}</colgroup>"
    head = "".join(f'<th scope="col">{escape(text)}</th>' for text in table.header)
    yield f"<thead><tr>{head}</tr></thead>"
    yield "<tbody>"
    for row in table.rows:
        yield "<tr>" + "".join(f"<td>{_runs(cell)}</td>" for cell in row) + "</tr>"
    yield "</tbody></table></div>"


def _runs(runs: tuple[Run, ...]) -> str:
    return "".join(_run(run) for run in runs)


def _run(run: Run) -> str:
    text = escape(run.text)
    if "-" in text:
        text = _NUMBER.sub(r'<span class="whole">\g<0></span>', text)
    if run.kind == "blank":
        return f'<span class="blank">{text}</span>'
    if run.kind == "reference":
        return _link(text, run.target)
    tag = _TAGS.get(run.kind)
    return f"<{tag}>{text}</{tag}>" if tag else text


def _link(text: str, target: str) -> str:
    return f'<a href="#{_anchor(target)}">{text}</a>'


def _anchor(id: str) -> str:
    return f"ref-{escape(id)}"
