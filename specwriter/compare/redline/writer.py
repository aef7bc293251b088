"""Matched blocks → WordprocessingML with tracked changes.

Two habits of office programs shape it (found by trial, LibreOffice 7.4). Text added at the very
end of a paragraph before a wholly added paragraph is not told from the paragraph mark: there the
last word that stays is taken into the change. And a removed table beside an added one would
become one table: an empty paragraph parts them.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import replace

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
        """All parts of the document, with the ends of moves around the blocks that moved."""
        flat = list(self._split(parts))
        texts: list[str] = []
        open_move, close = 0, ""
        for part, following in zip(flat, [*flat[1:], None], strict=True):
            move = part.move if isinstance(part, Removed | Added) and _can_move(part) else 0
            side = -move if isinstance(part, Removed) else move
            if side != open_move:
                texts.append(close)
                start, close = self._ends(part, move) if move else ("", "")
                texts.append(start)
                open_move = side
            texts.append(self._part(part, following))
        return "".join((*texts, close))

    def _ends(self, part: Part, move: int) -> tuple[str, str]:
        return self._revisions.move("moveFrom" if isinstance(part, Removed) else "moveTo", move)

    def _split(self, parts: Iterable[Part]) -> Iterator[Part]:
        """Parts whose list changed are removed and added; tables that would join are parted."""
        last: Part | None = None
        for part in parts:
            for each in self._unlisted(part):
                if _would_join(last, each):
                    yield Added(block=Paragraph(pieces=()))
                yield each
                last = each

    def _unlisted(self, part: Part) -> Iterator[Part]:
        if isinstance(part, Match | Rewritten) and not self._lists.fit(part.old, part.new):
            yield Removed(block=part.old)
            yield Added(block=part.new)
        else:
            yield part

    def _part(self, part: Part, following: Part | None) -> str:
        match part:
            case Match():
                return _paragraph(part.new, runs(part.new.pieces), part.new.properties)
            case Rewritten():
                spans = part.spans
                if isinstance(following, Added) and isinstance(following.block, Paragraph):
                    spans = with_a_word_before(spans)
                return _paragraph(part.new, self._spans(spans), part.new.properties)
            case Removed():
                return self._removed(part)
            case Added():
                return self._added(part)
            case MatchedTable():
                rows = "".join(self._row(row) for row in part.rows)
                return f"<w:tbl>{part.new.properties}{rows}</w:tbl>"

    def _spans(self, spans: Sequence[Span]) -> str:
        """What comes stands before what goes at the end of a paragraph, else behind it."""
        ordered = list(spans)
        if len(ordered) > 1 and (ordered[-2].kind, ordered[-1].kind) == ("removed", "added"):
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

    def _removed(self, part: Removed) -> str:
        if isinstance(part.block, Table):
            return self._whole_table(part.block, "del")
        change: Change = "moveFrom" if part.move else "del"
        text = self._one_side(part.block, part.spans, "removed", change)
        return self._changed_paragraph(part.block, text, change)

    def _added(self, part: Added) -> str:
        if isinstance(part.block, Table):
            return self._whole_table(part.block, "ins")
        change: Change = "moveTo" if part.move else "ins"
        text = self._one_side(part.block, part.spans, "added", change)
        return self._changed_paragraph(part.block, text, change)

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

    def _changed_paragraph(self, paragraph: Paragraph, text: str, change: Change) -> str:
        properties = paragraph.properties
        if change in ("del", "moveFrom"):
            properties = self._lists.old_properties(properties)
            paragraph = replace(paragraph, section="")
        return _paragraph(paragraph, text, properties, self._revisions.mark(change))

    def _whole_table(self, table: Table, change: Change) -> str:
        rows = "".join(self._whole_row(row, change) for row in table.rows)
        return f"<w:tbl>{table.properties}{rows}</w:tbl>"

    def _whole_row(self, row: Row, change: Change) -> str:
        cells = "".join(self._whole_cell(cell, change) for cell in row.cells)
        mark = self._revisions.mark(change)
        return f"<w:tr><w:trPr>{row.properties}{mark}</w:trPr>{cells}</w:tr>"

    def _whole_cell(self, cell: Cell, change: Change) -> str:
        kind = Removed if change == "del" else Added
        parts = [kind(block=block) for block in cell.blocks]
        return _cell(cell, "".join(self._part(part, None) for part in parts))

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


def _would_join(last: Part | None, part: Part) -> bool:
    return _table_side(last) is not None and _table_side(part) not in (None, _table_side(last))


def _table_side(part: Part | None) -> str | None:
    if isinstance(part, MatchedTable):
        return "both"
    if isinstance(part, Removed | Added) and isinstance(part.block, Table):
        return type(part).__name__
    return None


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
