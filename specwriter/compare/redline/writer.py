"""Matched blocks → WordprocessingML with tracked changes."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import replace

from specwriter.compare.redline.layout import Placed
from specwriter.compare.redline.lists import Lists
from specwriter.compare.redline.media import Media
from specwriter.compare.redline.references import References, without_fields
from specwriter.compare.redline.revision import Change, Revisions
from specwriter.compare.redline.runs import runs
from specwriter.compare.redline.spans import arranged
from specwriter.compare.text import (
    Added,
    Match,
    MatchedRow,
    MatchedTable,
    Part,
    Removed,
    Rewritten,
    Span,
)
from specwriter.compare.text.words import Kind
from specwriter.reading import Cell, Paragraph, Piece, Row, Table


class Writer:
    """Writes the body of a redline from top to bottom."""

    def __init__(
        self, revisions: Revisions, lists: Lists, media: Media, references: References
    ) -> None:
        self._revisions = revisions
        self._lists = lists
        self._media = media
        self._references = references

    def body(self, parts: Iterable[Part]) -> str:
        """All parts, with the ends of moves around the blocks that moved."""
        texts: list[str] = []
        open_move, close = 0, ""
        for each, spans in arranged(parts, self._lists):
            part = each.part
            move = part.move if isinstance(part, Removed | Added) else 0
            side = -move if isinstance(part, Removed) else move
            if side != open_move:
                texts.append(close)
                start, close = self._ends(part, move) if move else ("", "")
                texts.append(start)
                open_move = side
            texts.append(self._part(each, spans))
        return "".join((*texts, close))

    def _ends(self, part: Part, move: int) -> tuple[str, str]:
        return self._revisions.move("moveFrom" if isinstance(part, Removed) else "moveTo", move)

    def _part(self, placed: Placed, spans: Sequence[Span]) -> str:
        part = placed.part
        match part:
            case Match() | Rewritten():
                text = "".join(map(self._span, spans))
                return self._paragraph(part.new, text, placed)
            case Removed() | Added():
                return self._alone(placed, part)
            case MatchedTable():
                rows = "".join(self._row(row) for row in part.rows)
                return f"<w:tbl>{part.new.properties}{rows}</w:tbl>"

    def _paragraph(self, paragraph: Paragraph, text: str, placed: Placed) -> str:
        mark = self._revisions.mark(placed.mark) if placed.mark else ""
        form = f"{mark}{paragraph.mark_form}"
        around = f"<w:rPr>{form}</w:rPr>" if form else ""
        settings, before = paragraph.properties, placed.before
        if placed.bared:
            settings, before = ("", settings) if placed.mark == "del" else (settings, "")
        change = "" if before is None else self._revisions.settings(before)
        inner = f"{settings}{around}{paragraph.section}{change}"
        return f"<w:p>{f'<w:pPr>{inner}</w:pPr>' if inner else ''}{text}</w:p>"

    def _span(self, span: Span) -> str:
        if span.kind == "equal":
            return self._runs(span.pieces, "equal")
        return self._changed("del" if span.kind == "removed" else "ins", span.pieces)

    def _runs(self, pieces: Iterable[Piece], kind: Kind, *, deleted: bool = False) -> str:
        """The runs of some pieces; a bookmark of the old document is not written.

        What comes or goes is written without its links: a tracked change holds none.
        """
        if kind != "equal":
            pieces = (replace(piece, link="") if piece.link else piece for piece in pieces)
        bookmarks = {} if kind == "removed" else self._references.bookmarks
        settled = self._references.settled(pieces, kind)
        return runs(settled, deleted=deleted, bookmarks=bookmarks, look=self._revisions.look)

    def _old(self, pieces: Iterable[Piece]) -> Iterator[Piece]:
        for piece in pieces:
            thing = self._media.thing(piece.thing) if piece.thing else ""
            if thing or not piece.thing:
                yield replace(piece, thing=thing)

    def _alone(self, placed: Placed, part: Removed | Added) -> str:
        """A block of one side."""
        change = placed.mark or ("del" if isinstance(part, Removed) else "ins")
        if isinstance(part.block, Table):
            return self._whole_table(part.block, "del" if isinstance(part, Removed) else "ins")
        block = part.block
        if isinstance(part, Removed):
            properties = self._lists.old_properties(block.properties)
            block = replace(block, section="", properties=properties)
        text = self._changed(change, without_fields(block.pieces))
        return self._paragraph(block, text, placed)

    def _changed(self, change: Change, pieces: Iterable[Piece]) -> str:
        if change in ("ins", "moveTo"):
            return self._revisions.around(change, self._runs(pieces, "added"))
        old = self._runs(self._old(pieces), "removed", deleted=change == "del")
        return self._revisions.around(change, old)

    def _whole_table(self, table: Table, change: Change) -> str:
        rows = "".join(self._whole_row(row, change) for row in table.rows)
        return f"<w:tbl>{table.properties}{rows}</w:tbl>"

    def _whole_row(self, row: Row, change: Change) -> str:
        cells = "".join(self._whole_cell(cell, change) for cell in row.cells)
        mark = self._revisions.mark(change)
        # The schema asks for a property of the row itself beside the mark of its change.
        own = row.properties or '<w:cantSplit w:val="0"/>'
        return f"<w:tr><w:trPr>{own}{mark}</w:trPr>{cells}</w:tr>"

    def _whole_cell(self, cell: Cell, change: Change) -> str:
        kind = Removed if change == "del" else Added
        placed = (Placed(kind(block=block), change) for block in cell.blocks)
        return _cell(cell, "".join(self._part(each, ()) for each in placed))

    def _row(self, row: MatchedRow) -> str:
        if row.old is None or row.new is None:
            one = row.old or row.new
            assert one is not None
            return self._whole_row(one, "del" if row.old else "ins")
        cells = "".join(
            _cell(cell, self.body(parts))
            for cell, parts in zip(row.new.cells, row.cells, strict=True)
        )
        return f"<w:tr>{_row_properties(row.new)}{cells}</w:tr>"


def _row_properties(row: Row) -> str:
    return f"<w:trPr>{row.properties}</w:trPr>" if row.properties else ""


def _cell(cell: Cell, text: str) -> str:
    properties = f"<w:tcPr>{cell.properties}</w:tcPr>" if cell.properties else ""
    return f"<w:tc>{properties}{text}</w:tc>"
