"""Matched blocks → WordprocessingML with tracked changes.

Text added at the very end of a paragraph is not told from an added paragraph mark, nor from text
added at the start of the next paragraph, when it is rejected (found by trial, LibreOffice 7.4):
there what comes stands before what goes, and the last word that stays is taken into the change.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import replace

from specwriter.compare.redline.layout import Placed, laid_out
from specwriter.compare.redline.lists import Lists
from specwriter.compare.redline.media import Media
from specwriter.compare.redline.revision import Change, Revisions
from specwriter.compare.redline.runs import runs
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
from specwriter.compare.text.words import tokens
from specwriter.reading import Cell, Paragraph, Piece, Row, Table


class Writer:
    """Writes the body of a redline from top to bottom."""

    def __init__(self, revisions: Revisions, lists: Lists, media: Media) -> None:
        self._revisions = revisions
        self._lists = lists
        self._media = media

    def body(self, parts: Iterable[Part]) -> str:
        """All parts, with the ends of moves around the blocks that moved."""
        texts: list[str] = []
        open_move, close = 0, ""
        placed = laid_out(parts, self._lists)
        for each, spans in zip(placed, _ordered(placed), strict=True):
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
            return runs(span.pieces)
        if span.kind == "removed":
            return self._revisions.around("del", runs(self._old(span.pieces), deleted=True))
        return self._revisions.around("ins", runs(span.pieces))

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
        text = self._changed(change, block.pieces)
        return self._paragraph(block, text, placed)

    def _changed(self, change: Change, pieces: Iterable[Piece]) -> str:
        if change in ("ins", "moveTo"):
            return self._revisions.around(change, runs(pieces))
        deleted = change == "del"
        return self._revisions.around(change, runs(self._old(pieces), deleted=deleted))

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


def _ordered(placed: Sequence[Placed]) -> list[tuple[Span, ...]]:
    """The spans of each paragraph that stays, in the order in which they are written."""
    found: list[tuple[Span, ...]] = []
    comes_behind = False
    for each in reversed(placed):
        part = each.part
        spans: tuple[Span, ...] = ()
        if isinstance(part, Match | Rewritten):
            spans = getattr(part, "spans", ()) or (Span("equal", part.new.pieces),)
            if comes_behind or each.mark == "ins":
                spans = _with_a_safe_end(spans)
        comes_behind = (bool(spans) and spans[0].kind == "added") or _is_added_paragraph(part)
        found.append(spans)
    return found[::-1]


def _with_a_safe_end(spans: Sequence[Span]) -> tuple[Span, ...]:
    """The spans so that none that comes stands at the end."""
    ordered = with_a_word_before(spans)
    if [span.kind for span in ordered[-2:]] == ["removed", "added"]:
        return (*ordered[:-2], ordered[-1], ordered[-2])
    return ordered


def _is_added_paragraph(part: Part) -> bool:
    return isinstance(part, Added) and isinstance(part.block, Paragraph)


def _row_properties(row: Row) -> str:
    return f"<w:trPr>{row.properties}</w:trPr>" if row.properties else ""


def _cell(cell: Cell, text: str) -> str:
    properties = f"<w:tcPr>{cell.properties}</w:tcPr>" if cell.properties else ""
    return f"<w:tc>{properties}{text}</w:tc>"


def with_a_word_before(spans: Sequence[Span]) -> tuple[Span, ...]:
    """The spans, with the last word that stays taken into an addition at the very end."""
    if len(spans) < 2 or spans[-1].kind != "added" or spans[-2].kind != "equal":
        return tuple(spans)
    stays, word = _without_last_word(spans[-2].pieces)
    kept = (Span("equal", stays),) if stays else ()
    added = Span("added", (*word, *spans[-1].pieces))
    return (*spans[:-2], *kept, Span("removed", word), added)


def _without_last_word(pieces: Sequence[Piece]) -> tuple[tuple[Piece, ...], tuple[Piece, ...]]:
    last = pieces[-1]
    words = tokens(last.text)
    word = words[-1] if last.thing == "" else last.text
    rest = last.text[: len(last.text) - len(word)]
    stays = (*pieces[:-1], replace(last, text=rest)) if rest else tuple(pieces[:-1])
    return stays, (replace(last, text=word),)
