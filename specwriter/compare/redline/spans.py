"""The spans of paragraphs in the order in which they are written.

Text added at the very end of a paragraph is not told from an added paragraph mark, nor from text
added at the start of the next paragraph, when it is rejected (found by trial, LibreOffice 7.4):
there what comes stands before what goes, and the last word that stays is taken into the change.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence

from specwriter.compare.redline.layout import Placed, laid_out
from specwriter.compare.redline.lists import Lists
from specwriter.compare.text import Added, Match, Part, Rewritten, Span
from specwriter.compare.text.form import with_looks_before
from specwriter.compare.text.words import tokens
from specwriter.reading import Paragraph, Piece


def arranged(parts: Iterable[Part], lists: Lists) -> Iterator[tuple[Placed, Sequence[Span]]]:
    """What is to be written from top to bottom; for a paragraph that stays, its spans."""
    placed = laid_out(parts, lists)
    return zip(placed, _ordered(placed), strict=True)


def _ordered(placed: Sequence[Placed]) -> list[tuple[Span, ...]]:
    """The spans of each paragraph that stays, in the order in which they are written."""
    found: list[tuple[Span, ...]] = []
    comes_behind = False
    for each in reversed(placed):
        part = each.part
        spans: tuple[Span, ...] = ()
        if isinstance(part, Match | Rewritten):
            spans = getattr(part, "spans", ()) or _unchanged(part)
            if comes_behind or each.mark == "ins":
                spans = _with_a_safe_end(spans)
        comes_behind = (bool(spans) and spans[0].kind == "added") or _is_added_paragraph(part)
        found.append(spans)
    return found[::-1]


def _unchanged(part: Match | Rewritten) -> tuple[Span, ...]:
    return (Span("equal", with_looks_before(part.old.pieces, part.new.pieces)),)


def _with_a_safe_end(spans: Sequence[Span]) -> tuple[Span, ...]:
    """The spans so that none that comes stands at the end."""
    ordered = with_a_word_before(spans)
    if [span.kind for span in ordered[-2:]] == ["removed", "added"]:
        return (*ordered[:-2], ordered[-1], ordered[-2])
    return ordered


def _is_added_paragraph(part: Part) -> bool:
    return isinstance(part, Added) and isinstance(part.block, Paragraph)


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
    at = len(last.text) - len(word)
    stays = (*pieces[:-1], last.part(0, at)) if at else tuple(pieces[:-1])
    return stays, (last.part(at, len(last.text)),)
