"""What came of laying two documents side by side: their blocks, matched, in one order.

Read from top to bottom, with what was removed left out, the parts give the new document; with
what was added left out, the old one.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from specwriter.compare.text.words import Span
from specwriter.reading import Block, Cell, Paragraph, Piece, Row, Table


@dataclass(frozen=True, slots=True, kw_only=True)
class Match:
    """A paragraph that stands in both with the same text."""

    old: Paragraph
    new: Paragraph


@dataclass(frozen=True, slots=True, kw_only=True)
class Rewritten:
    """A paragraph with other words: ``spans`` in reading order."""

    old: Paragraph
    new: Paragraph
    spans: tuple[Span, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Removed:
    """A block of the old document alone.

    ``move`` is not 0 when the same block stands elsewhere in the new document: the number of the
    move. ``spans`` then tell the words that did not go along, where some did not.
    """

    block: Block
    move: int = 0
    spans: tuple[Span, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Added:
    """A block of the new document alone; ``move`` and ``spans`` as in ``Removed``."""

    block: Block
    move: int = 0
    spans: tuple[Span, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class MatchedRow:
    """A row of a table in both: for each cell its parts. A side is ``None`` where it is absent."""

    old: Row | None
    new: Row | None
    cells: tuple[tuple[Part, ...], ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class MatchedTable:
    """A table that stands in both, row by row."""

    old: Table
    new: Table
    rows: tuple[MatchedRow, ...]

    @property
    def is_same(self) -> bool:
        """True when no word of it differs."""
        return all(
            row.old and row.new and all(is_same(part) for cell in row.cells for part in cell)
            for row in self.rows
        )


Part = Match | Rewritten | Removed | Added | MatchedTable


def is_same(part: Part) -> bool:
    """True for what stands in both with the same words."""
    return isinstance(part, Match) or (isinstance(part, MatchedTable) and part.is_same)


@dataclass(frozen=True, slots=True, kw_only=True)
class Clause:
    """A clause of either document, or of both: its heading on each side, and its parts.

    What stands before the first heading is a clause without heading. A clause that moved appears
    twice: where it went from (``new`` is ``None``) and where it went to (``old`` is ``None``),
    with the same ``move``.
    """

    old: Paragraph | None
    new: Paragraph | None
    parts: tuple[Part, ...]
    move: int = 0

    @property
    def title(self) -> str:
        """The number and the words of its heading, of the new document where there is one."""
        heading = self.new or self.old
        if heading is None:
            return ""
        return " ".join(filter(None, (heading.label, heading.text.strip())))


@dataclass(frozen=True, slots=True, kw_only=True)
class Beside:
    """A header, footer or note of either document, or of both: its name and what it holds.

    ``part`` is the part of the new file in which it stands; empty where that has none. ``note``
    is the number of a note in that part.
    """

    name: str
    part: str
    parts: tuple[Part, ...]
    note: str = ""

    @property
    def clause(self) -> Clause:
        """The same as a clause under its name."""
        heading = Paragraph(pieces=(Piece(self.name),), heading=1)
        named = Match(old=heading, new=heading)
        return Clause(old=heading, new=heading, parts=(named, *self.parts))


@dataclass(frozen=True, slots=True, kw_only=True)
class TextMatch:
    """Two documents side by side; ``margins`` are headers, footers and notes that differ.

    ``shows_looks`` is true where both are Word files: other files show no look, or another.
    """

    clauses: tuple[Clause, ...]
    margins: tuple[Beside, ...] = ()
    shows_looks: bool = False

    @property
    def is_same(self) -> bool:
        """True when no word differs."""
        return not self.margins and all(is_same(part) for part in self.parts)

    @property
    def parts(self) -> Iterator[Part]:
        """All parts of the text, in order."""
        for clause in self.clauses:
            yield from clause.parts


def blocks_of(cell: Cell | None) -> tuple[Block, ...]:
    """The blocks of a cell that may be absent."""
    return cell.blocks if cell else ()
