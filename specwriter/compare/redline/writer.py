"""Matched blocks → WordprocessingML with tracked changes.

Text added at the very end of a paragraph before an added paragraph mark is not told from that mark
when it is rejected (found by trial, LibreOffice 7.4): there what comes stands before what goes,
and the last word that stays is taken into the change.
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
        for each, following in zip(placed, [*placed[1:], None], strict=True):
            part = each.part
            move = part.move if isinstance(part, Removed | Added) and _can_move(part) else 0
            side = -move if isinstance(part, Removed) else move
            if side != open_move:
                texts.append(close)
                start, close = self._ends(part, move) if move else ("", "")
                texts.append(start)
                open_move = side
            texts.append(self._part(each, following))
        return "".join((*texts, close))

    def _ends(self, part: Part, move: int) -> tuple[str, str]:
        return self._revisions.move("moveFrom" if isinstance(part, Removed) else "moveTo", move)

    def _part(self, placed: Placed, following: Placed | None) -> str:
        part, mark = placed.part, self._revisions.mark(placed.mark) if placed.mark else ""
        match part:
            case Match() | Rewritten():
                at_end = placed.mark == "ins" or _is_added_paragraph(following)
                spans = getattr(part, "spans", ()) or (Span("equal", part.new.pieces),)
                text = self._spans(spans, at_end)
                return _paragraph(part.new, text, part.new.properties, mark)
            case Removed():
                return self._removed(part, mark)
            case Added():
                return self._added(part, mark)
            case MatchedTable():
                rows = "".join(self._row(row) for row in part.rows)
                return f"<w:tbl>{part.new.properties}{rows}</w:tbl>"

    def _spans(self, spans: Sequence[Span], at_added_end: bool) -> str:
        """What goes stands before what comes, but not before an end that is added."""
        ordered = list(with_a_word_before(spans) if at_added_end else spans)
        kinds = [span.kind for span in ordered[-2:]]
        if at_added_end and kinds == ["removed", "added"]:
            ordered[-2:] = ordered[:-3:-1]
        return "".join(map(self._span, ordered))

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

    def _removed(self, part: Removed, mark: str) -> str:
        if isinstance(part.block, Table):
            return self._whole_table(part.block, "del")
        text = self._one_side(part.block, part.spans, "removed", "moveFrom" if part.move else "del")
        properties = self._lists.old_properties(part.block.properties)
        return _paragraph(replace(part.block, section=""), text, properties, mark)

    def _added(self, part: Added, mark: str) -> str:
        if isinstance(part.block, Table):
            return self._whole_table(part.block, "ins")
        text = self._one_side(part.block, part.spans, "added", "moveTo" if part.move else "ins")
        return _paragraph(part.block, text, part.block.properties, mark)

    def _one_side(
        self, paragraph: Paragraph, spans: Sequence[Span], kind: str, change: Change
    ) -> str:
        """One side of a paragraph; the words that did not move along are marked otherwise."""
        if not spans:
            return self._changed(change, paragraph.pieces)
        return "".join(
            self._changed(change if span.kind == "equal" else _plain(change), span.pieces)
            for span in spans
            if span.kind in ("equal", kind)
        )

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
        placed = [Placed(kind(block=block), change) for block in cell.blocks]
        return _cell(cell, "".join(self._part(each, None) for each in placed))

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


def _plain(change: Change) -> Change:
    return "del" if change == "moveFrom" else "ins"


def _can_move(part: Removed | Added) -> bool:
    """Rows of a table have no mark for a move: a table that moved goes here and comes there."""
    return isinstance(part.block, Paragraph)


def _is_added_paragraph(placed: Placed | None) -> bool:
    part = placed.part if placed else None
    return isinstance(part, Added) and isinstance(part.block, Paragraph)


def _paragraph(paragraph: Paragraph, text: str, properties: str, mark: str = "") -> str:
    form = f"{mark}{paragraph.mark_form}"
    around = f"<w:rPr>{form}</w:rPr>" if form else ""
    inner = f"{properties}{around}{paragraph.section}"
    return f"<w:p>{f'<w:pPr>{inner}</w:pPr>' if inner else ''}{text}</w:p>"


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
