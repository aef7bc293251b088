"""Plain text or Markdown → blocks; what is markup in Markdown is read, everything else is text."""

from __future__ import annotations

import re
from collections.abc import Iterator

from specwriter.reading.block import Block, Cell, Paragraph, Piece, Row, Table, Text

_HEADING = re.compile(r"^(#{1,6})\s+(.*?)\s*#*$")
_NUMBERED = re.compile(r"^(\d{1,3}(?:\.\d{1,3})*\.?|[A-Z]\.|(?:SECTION|PART|ARTICLE)\s+\d+)\s+\S")
_ITEM = re.compile(r"^\s*(?:[-*+•]|\(?[0-9a-zA-Z]{1,4}[.)])\s+\S")
_RULE = re.compile(r"^\s*\|?\s*:?-{2,}:?\s*(\|\s*:?-{2,}:?\s*)*\|?\s*$")
_BREAK = re.compile(r"^\s*([-*_])(\s*\1){2,}\s*$")
_MARKUP = re.compile(r"\\([!-/:-@\[-`{-~])|(\*\*|__)|([*_])")
_BAR = re.compile(r"(?<!\\)\|")
_LONGEST_HEADING = 90
BOLD, ITALIC = "<w:b/>", "<w:i/>"


def read_plain(text: str, *, markdown: bool) -> Text:
    """The blocks of a text; a line by itself, short and numbered, counts as a heading."""
    lines = text.replace("\r\n", "\n").replace("\r", "\n").replace("\t", " ").split("\n")
    return Text(blocks=tuple(_blocks(lines, markdown)))


def _blocks(lines: list[str], markdown: bool) -> Iterator[Block]:
    waiting: list[str] = []
    table: list[str] = []
    for line in (*lines, ""):
        if line.lstrip().startswith("|"):
            yield from _paragraph(waiting, markdown)
            table.append(line.strip())
            continue
        if table:
            yield _table(table, markdown)
            table = []
        if not line.strip() or (markdown and _BREAK.match(line)):
            yield from _paragraph(waiting, markdown)
        elif markdown and (found := _HEADING.match(line)):
            yield from _paragraph(waiting, markdown)
            yield _block(found[2], markdown, heading=len(found[1]))
        else:
            if _ITEM.match(line) or (waiting and _NUMBERED.match(line)):
                yield from _paragraph(waiting, markdown)
            waiting.append(line.strip())


def _paragraph(waiting: list[str], markdown: bool) -> Iterator[Paragraph]:
    if waiting:
        text = " ".join(waiting)
        yield _block(text, markdown, heading=_heading_level(text))
        waiting.clear()


def _block(text: str, markdown: bool, heading: int) -> Paragraph:
    return Paragraph(
        pieces=tuple(_pieces(text, markdown)),
        heading=heading,
        style=f"Heading{min(heading, 2)}" if heading else "BodyText",
    )


def _heading_level(text: str) -> int:
    """A short numbered line without a full stop at its end, or one in capitals, is a heading."""
    if len(text) > _LONGEST_HEADING or text.endswith((".", ";", ":", ",")):
        return 0
    if found := _NUMBERED.match(text):
        return found[1].rstrip(".").count(".") + 1
    words = re.findall(r"[^\W\d_]{2,}", text)
    return 1 if words and text == text.upper() and len(text) > 3 else 0


def _pieces(text: str, markdown: bool) -> Iterator[Piece]:
    """Stretches of one form; unmatched stars stay, since a text may hold them as signs."""
    if not markdown:
        yield Piece(text)
        return
    forms = {"bold": text.count("**") >= 2, "italic": False}
    on = {"bold": False, "italic": False}
    buffer, last = "", 0
    for found in _MARKUP.finditer(text):
        buffer += text[last : found.start()]
        last = found.end()
        if found[1]:
            buffer += found[1]
            continue
        kind = "bold" if found[2] else "italic"
        if not _switches(text, found, on[kind], forms["bold"] if kind == "bold" else True):
            buffer += found[0]
            continue
        if buffer:
            yield Piece(buffer, _form(on))
        buffer, on[kind] = "", not on[kind]
    if rest := buffer + text[last:]:
        yield Piece(rest, _form(on))


def _switches(text: str, found: re.Match[str], on: bool, wanted: bool) -> bool:
    """True where a star or underscore opens or closes emphasis: against a word on one side."""
    before = text[found.start() - 1 : found.start()] or " "
    after = text[found.end() : found.end() + 1] or " "
    if not wanted:
        return False
    if on:
        return not before.isspace()
    closes = text.find(found[0], found.end() + 1) > 0
    return closes and not after.isspace() and not (before.isalnum() and found[0] != "**")


def _form(on: dict[str, bool]) -> str:
    return (BOLD if on["bold"] else "") + (ITALIC if on["italic"] else "")


def _table(lines: list[str], markdown: bool) -> Table:
    rows = [_row(line, markdown) for line in lines if not _RULE.match(line)]
    return Table(rows=tuple(rows))


def _row(line: str, markdown: bool) -> Row:
    inner = line.strip().removeprefix("|")
    if inner.endswith("|") and not inner.endswith("\\|"):
        inner = inner[:-1]
    return Row(
        cells=tuple(Cell(blocks=(_cell(text.strip(), markdown),)) for text in _BAR.split(inner))
    )


def _cell(text: str, markdown: bool) -> Paragraph:
    return Paragraph(pieces=tuple(_pieces(text, markdown)), style="TableText")
