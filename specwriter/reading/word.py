"""A Word file → blocks, by its XML parts; inserted and deleted text is kept apart."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from typing import Literal
from xml.etree.ElementTree import Element

from specwriter.reading.block import (
    OBJECT,
    Block,
    Cell,
    Margin,
    Paragraph,
    Piece,
    Row,
    State,
    Table,
    Text,
)
from specwriter.reading.counting import Counting, Style, chain, styles_of
from specwriter.reading.fault import ReadingFault
from specwriter.reading.fields import Fields, field_shown
from specwriter.reading.joining import joined
from specwriter.reading.margins import margins_of, note_of
from specwriter.reading.package import DOCUMENT, read_package
from specwriter.reading.symbols import symbol
from specwriter.reading.view import seen
from specwriter.reading.xml import MC, M, Namer, R, W, parse, value, whole

_STATES: dict[str, State] = {
    f"{W}ins": "inserted",
    f"{W}moveTo": "inserted",
    f"{W}del": "deleted",
    f"{W}moveFrom": "deleted",
}
_SIGNS = {"tab": "\t", "br": "\n", "cr": "\n", "noBreakHyphen": "\u2011", "softHyphen": ""}
_THINGS = frozenset(W + each for each in ("drawing", "pict", "object")) | {f"{MC}AlternateContent"}
_PASSING = frozenset(
    W + each
    for each in (
        "hyperlink",
        "smartTag",
        "sdtContent",
        "sdt",
        "customXml",
        "dir",
        "bdo",
    )
)
_CHANGES = frozenset(
    W + each for each in ("ins", "del", "moveFrom", "moveTo", "rPrChange", "pPrChange", "rPr")
)
_FORM_LEFT_OUT = _CHANGES | {f"{W}lang", f"{W}noProof"}
_PARAGRAPH_LEFT_OUT = _CHANGES | {f"{W}sectPr"}
_ROW_LEFT_OUT = frozenset(W + each for each in ("ins", "del", "trPrChange"))
_EQUATIONS = (f"{M}oMath", f"{M}oMathPara")
_NOTES = ("footnoteReference", "endnoteReference")
_BOOKMARKS = (f"{W}bookmarkStart", f"{W}bookmarkEnd")
_DEEPEST = 40

View = Literal["new", "old", "both"]
"""Which reading of a file with tracked changes: all accepted, all rejected, or both at once."""


def read_word(content: bytes, view: View = "new") -> Text:
    """The blocks of a Word file; ``ReadingFault`` when it cannot be read.

    A field is read as what it shows, a count of pages as a sign. ``both`` keeps every piece
    with its state and gives no numbers, since those differ between the two readings.
    """
    parts = read_package(content)
    try:
        return _read(parts, view)
    except RecursionError:
        raise ReadingFault(
            "the elements of this Word file are nested too deeply to be a text",
            "open it in the office program, save it again and use that file",
        ) from None


def _read(parts: dict[str, bytes], view: View) -> Text:
    walker = Walker(parts)
    root = parse(parts[DOCUMENT], DOCUMENT)
    body = root.find(f"{W}body")
    blocks = tuple(walker.blocks(body)) if body is not None else ()
    last = None if body is None else body.find(f"{W}sectPr")
    margins = tuple(
        Margin(name=name, part=part, blocks=tuple(walker.blocks(owner)), note=note_of(owner))
        for name, part, owner in margins_of(parts, root)
    )
    text = Text(
        blocks=blocks,
        margins=margins,
        tracked=walker.tracked,
        section="" if last is None else walker.namer.text(last),
        namespaces=walker.namer.used,
    )
    return text if view == "both" else seen(text, view, walker.counting())


class Walker:
    """Turns elements into blocks; knows the styles and countings of its file."""

    def __init__(self, parts: dict[str, bytes]) -> None:
        self.namer = Namer()
        self.tracked = False
        self._numbering = _root(parts, "word/numbering.xml")
        self._levels = Counting(self._numbering)
        self._styles = styles_of(_root(parts, "word/styles.xml"))
        self._chains: dict[str, list[Style]] = {}
        self._bookmarks: dict[str, str] = {}
        self._depth = 0

    def counting(self) -> Counting:
        """A counting that has not begun."""
        return Counting(self._numbering)

    def blocks(self, owner: Element) -> Iterator[Block]:
        """The paragraphs and tables of a body or a cell, those in content controls too."""
        for child in owner:
            if child.tag == f"{W}p":
                yield self._paragraph(child)
            elif child.tag == f"{W}tbl":
                yield self._table(child)
            elif child.tag in _PASSING or child.tag in _STATES:
                yield from self.blocks(child)

    def _paragraph(self, element: Element) -> Paragraph:
        properties = element.find(f"{W}pPr")
        mark = properties.find(f"{W}rPr") if properties is not None else None
        return replace(
            self._set(properties),
            pieces=tuple(self._joined(element)),
            section=self._section(properties),
            mark_form=self._inner(mark, _FORM_LEFT_OUT),
            mark=self._state(mark),
            before=self._before(properties),
        )

    def _joined(self, paragraph: Element) -> Iterator[Piece]:
        fields = Fields()
        pieces = [*self._pieces(paragraph, "kept", fields), *fields.left()]
        return joined(pieces)

    def _set(self, properties: Element | None) -> Paragraph:
        """An empty paragraph that is set in this way."""
        style = value(properties, "pStyle") or ""
        return Paragraph(
            pieces=(),
            style=self._styles[style].name if style in self._styles else style,
            heading=self._heading(properties, style),
            list=self._list(properties, style),
            properties=self._inner(properties, _PARAGRAPH_LEFT_OUT),
        )

    def _before(self, properties: Element | None) -> Paragraph | None:
        change = None if properties is None else properties.find(f"{W}pPrChange")
        if change is None:
            return None
        self.tracked = True
        return self._set(change.find(f"{W}pPr"))

    def _section(self, properties: Element | None) -> str:
        section = None if properties is None else properties.find(f"{W}sectPr")
        return "" if section is None else self.namer.text(section)

    def _chain(self, style: str) -> list[Style]:
        if style not in self._chains:
            self._chains[style] = chain(self._styles, style)
        return self._chains[style]

    def _heading(self, properties: Element | None, style: str) -> int:
        own = value(properties, "outlineLvl")
        levels = [each.outline for each in self._chain(style) if each.outline is not None]
        level = whole(own, next(iter(levels), 9))
        return level + 1 if level < 9 else 0

    def _list(self, properties: Element | None, style: str) -> tuple[str, int] | None:
        own_level = value(properties, "numPr", "ilvl")
        num = value(properties, "numPr", "numId")
        if num is None:
            num = next((each.num for each in self._chain(style) if each.num is not None), None)
        if num is None or num == "0":
            return None
        if own_level is not None:
            return num, whole(own_level, 0)
        given = next((each.level for each in self._chain(style) if each.level is not None), None)
        return num, self._levels.level_of_style(num, style) if given is None else given

    def _pieces(self, owner: Element, state: State, fields: Fields) -> Iterator[Piece]:
        """The runs below ``owner``."""
        for child in owner:
            if child.tag == f"{W}r":
                yield from self._run(child, state, fields)
            elif child.tag in _EQUATIONS:
                yield from fields.keep(Piece(OBJECT, "", state, self.namer.text(child)))
            elif child.tag == f"{W}fldSimple":
                yield from self._simple_field(child, state, fields)
            elif child.tag in _BOOKMARKS:
                yield from fields.keep(self._bookmark(child))
            elif child.tag in _STATES:
                self.tracked = True
                # What is deleted inside an insertion stands in neither reading but the middle one.
                inner = "deleted" if state == "deleted" else _STATES[child.tag]
                yield from self._pieces(child, inner, fields)
            elif child.tag in _PASSING:
                link = self._link(child)
                for piece in self._pieces(child, state, fields):
                    yield replace(piece, link=link) if link else piece

    def _link(self, element: Element) -> str:
        """The start tag of a link out of the file; one within it needs a bookmark that may go."""
        if element.tag != f"{W}hyperlink" or f"{R}id" not in element.attrib:
            return ""
        return self.namer.text(Element(element.tag, element.attrib)).removesuffix("/>") + ">"

    def _simple_field(self, field: Element, state: State, fields: Fields) -> Iterator[Piece]:
        result = [*self._pieces(field, state, Fields())]
        for piece in field_shown(field.get(f"{W}instr", ""), result, state=state):
            yield from fields.keep(piece)

    def _bookmark(self, element: Element) -> Piece:
        id = element.get(f"{W}id", "")
        if element.tag == f"{W}bookmarkStart":
            name = self._bookmarks[id] = element.get(f"{W}name", "")
            return Piece("", opens=(name,))
        name = self._bookmarks.get(id, "")
        return Piece("", closes=(name,))

    def _run(self, run: Element, state: State, fields: Fields) -> Iterator[Piece]:
        properties = run.find(f"{W}rPr")
        if properties is not None and _is_on(properties.find(f"{W}vanish")):
            return
        form = self._inner(properties, _FORM_LEFT_OUT)
        for child in run:
            kind = child.tag.rpartition("}")[2]
            if kind == "fldChar":
                yield from fields.take(child.get(f"{W}fldCharType"), form, state)
            elif kind in ("instrText", "delInstrText"):
                fields.instruct(child.text or "")
            elif piece := self._piece(child, kind, form, state):
                yield from fields.keep(piece)

    def _piece(self, child: Element, kind: str, form: str, state: State) -> Piece | None:
        """What an element of a run shows."""
        if kind in ("t", "delText"):
            return Piece((child.text or "").replace("\n", " "), form, state)
        if kind in _SIGNS:
            is_page_end = child.get(f"{W}type") in ("page", "column")
            return None if is_page_end else Piece(_SIGNS[kind], form, state)
        if kind == "sym":
            return Piece(symbol(child.get(f"{W}font"), child.get(f"{W}char")), form, state)
        if child.tag in _THINGS or kind in _NOTES:
            return Piece(OBJECT, form, state, self.namer.text(child))
        return None

    def _table(self, element: Element) -> Table:
        self._depth += 1
        before = (each for each in element if each.tag in (f"{W}tblPr", f"{W}tblGrid"))
        properties = "".join(self.namer.text(each) for each in before)
        rows = tuple(self._row(each) for each in _rows(element)) if self._depth < _DEEPEST else ()
        self._depth -= 1
        return Table(rows=rows, properties=properties)

    def _row(self, element: Element) -> Row:
        properties = element.find(f"{W}trPr")
        return Row(
            cells=tuple(self._cell(each) for each in _below(element, f"{W}tc")),
            properties=self._inner(properties, _ROW_LEFT_OUT),
            state=self._state(properties),
        )

    def _cell(self, element: Element) -> Cell:
        return Cell(
            blocks=tuple(self.blocks(element)),
            properties=self._inner(element.find(f"{W}tcPr"), frozenset()),
        )

    def _state(self, properties: Element | None) -> State:
        for child in () if properties is None else properties:
            if child.tag in _STATES:
                self.tracked = True
                return _STATES[child.tag]
        return "kept"

    def _inner(self, element: Element | None, left_out: frozenset[str]) -> str:
        if element is None:
            return ""
        return "".join(self.namer.text(each) for each in element if each.tag not in left_out)


def _root(parts: dict[str, bytes], name: str) -> Element | None:
    return parse(parts[name], name) if name in parts else None


def _is_on(switch: Element | None) -> bool:
    return switch is not None and switch.get(f"{W}val") not in ("0", "false", "off")


def _rows(table: Element) -> Iterator[Element]:
    return _below(table, f"{W}tr")


def _below(owner: Element, tag: str) -> Iterator[Element]:
    """Children of that tag, those in content controls too."""
    for child in owner:
        if child.tag == tag:
            yield child
        elif child.tag in _PASSING:
            yield from _below(child, tag)
