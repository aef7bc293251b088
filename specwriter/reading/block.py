"""What a document consists of, whatever file it came from: paragraphs and tables, in order."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field, replace
from html import unescape
from typing import Literal

State = Literal["kept", "inserted", "deleted"]
"""What the document's own tracked changes say of a piece, a paragraph mark or a row."""

OBJECT = "\ufffc"
"""Stands in the text for a picture or another thing that is no text."""

_HYPHEN, _MINUS = "\u2011", "\u2212"
"""Kept in the pieces, since a redline gives them back; in what is read and compared a hyphen."""

_EQUATION = re.compile(r"<m:t(?:\s[^>]*)?>([^<]*)</m:t>")
_DESCRIPTION = re.compile(r'\bdescr="([^"]*)"')


@dataclass(frozen=True, slots=True)
class Piece:
    """A stretch of text of one form. ``form`` and ``thing`` are WordprocessingML, or empty.

    ``thing`` is the XML of a picture or another thing; the text is then ``OBJECT``. ``field`` is
    the instruction of a field that counts or refers; the text is what it shows, but ``#`` for a
    count of pages, for that is nothing that anybody wrote. ``opens`` and ``closes`` name the
    bookmarks that begin before the piece and end behind it. ``before`` is the form that it had in
    another version where it then looked otherwise. ``link`` is the start tag of a link out of the
    file, whose target the part that the piece stands in knows.
    """

    text: str
    form: str = ""
    state: State = "kept"
    thing: str = ""
    field: str = ""
    opens: tuple[str, ...] = ()
    closes: tuple[str, ...] = ()
    before: str | None = None
    link: str = ""

    def part(self, start: int, end: int) -> Piece:
        """The piece from character ``start`` to ``end``; part of what a field shows is no field."""
        if start == 0 and end == len(self.text):
            return self
        return replace(
            self,
            text=self.text[start:end],
            field="",
            opens=() if start else self.opens,
            closes=self.closes if end == len(self.text) else (),
        )

    @property
    def shown(self) -> str:
        """The text; for a picture its description in brackets, for an equation its letters."""
        if not self.thing:
            return with_plain_hyphens(self.text)
        if "noteReference" in self.thing:
            return "[note]"
        if words := "".join(_EQUATION.findall(self.thing)):
            return f"[equation: {unescape(words)}]"
        found = _DESCRIPTION.search(self.thing)
        description = " ".join(unescape(found[1]).split()) if found else ""
        return f"[figure: {description}]" if description else "[figure]"


@dataclass(frozen=True, slots=True, kw_only=True)
class Paragraph:
    """One paragraph: its pieces, and how it is set.

    ``heading`` is the level of a heading, from 1; 0 for other text. ``label`` is the number shown
    before the text and not part of it; ``list`` names the counting it takes part in (id, level).
    ``style`` is the name of its style. ``properties``, ``mark_form`` and ``section`` are
    WordprocessingML: inside ``w:pPr``, of the mark, and of the section that ends here.
    ``before`` holds how it was set where the document tracks a change of that.
    """

    pieces: tuple[Piece, ...]
    style: str = ""
    heading: int = 0
    label: str = ""
    list: tuple[str, int] | None = None
    properties: str = ""
    mark_form: str = ""
    section: str = ""
    mark: State = "kept"
    before: Paragraph | None = None

    @property
    def text(self) -> str:
        """The text without the number before it."""
        return with_plain_hyphens("".join(piece.text for piece in self.pieces))

    @property
    def shown(self) -> str:
        """The text with the descriptions of pictures."""
        return "".join(piece.shown for piece in self.pieces)


@dataclass(frozen=True, slots=True, kw_only=True)
class Cell:
    """A cell of a table: blocks of its own."""

    blocks: tuple[Block, ...]
    properties: str = ""

    @property
    def text(self) -> str:
        """Its paragraphs, one a line."""
        return "\n".join(block.text for block in self.blocks)

    @property
    def shown(self) -> str:
        """The same with the descriptions of pictures."""
        return "\n".join(block.shown for block in self.blocks)


@dataclass(frozen=True, slots=True, kw_only=True)
class Row:
    """A row of a table."""

    cells: tuple[Cell, ...]
    properties: str = ""
    state: State = "kept"

    @property
    def text(self) -> str:
        """Its cells with tabs between."""
        return "\t".join(cell.text for cell in self.cells)

    @property
    def shown(self) -> str:
        """Its cells with bars between, and the descriptions of pictures."""
        return " | ".join(cell.shown for cell in self.cells)


@dataclass(frozen=True, slots=True, kw_only=True)
class Table:
    """A table; ``properties`` is the WordprocessingML before its rows."""

    rows: tuple[Row, ...]
    properties: str = ""

    @property
    def text(self) -> str:
        """Its rows, one a line."""
        return "\n".join(row.text for row in self.rows)

    @property
    def shown(self) -> str:
        """The same with the descriptions of pictures."""
        return "\n".join(row.shown for row in self.rows)


Block = Paragraph | Table


@dataclass(frozen=True, slots=True, kw_only=True)
class Margin:
    """A header, a footer or a note of a document: its name in words, and the part it is in.

    ``note`` is ``footnote`` or ``endnote`` with its number in the file; ``None`` for the others.
    """

    name: str
    part: str
    blocks: tuple[Block, ...]
    note: tuple[str, str] | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Text:
    """A document as a reader sees it.

    ``margins`` are what stands beside the text: headers, footers and notes. ``tracked`` is true
    when the file holds tracked changes of its own, so that it reads in two ways. ``section`` is
    the WordprocessingML of its last section, ``namespaces`` are those that the XML of its blocks
    uses, prefix → name.
    """

    blocks: tuple[Block, ...]
    margins: tuple[Margin, ...] = ()
    tracked: bool = False
    section: str = ""
    namespaces: Mapping[str, str] = field(default_factory=dict)


def with_plain_hyphens(text: str) -> str:
    """The text with a minus or a hyphen without break as a plain one; no place in it moves."""
    # Two searches take a tenth of the time of one translation.
    return text.replace(_HYPHEN, "-").replace(_MINUS, "-")


def paragraphs(blocks: tuple[Block, ...]) -> Iterator[Paragraph]:
    """Every paragraph, those in cells as well, in reading order."""
    for block in blocks:
        if isinstance(block, Paragraph):
            yield block
        else:
            for row in block.rows:
                for cell in row.cells:
                    yield from paragraphs(cell.blocks)
