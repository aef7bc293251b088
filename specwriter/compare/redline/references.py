"""References and countings that show the same number in every state of a redline.

An office program counts captions and looks up references anew, with what was removed and what was
added side by side. A field stays a field only where it then shows what its document shows; else
its number is written as text. So it is in paragraphs that come or go as a whole: with a field
inside, the numbers behind them show wrong (found by trial, LibreOffice 7.4).
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, field, replace

from specwriter.compare.text import Span
from specwriter.compare.text.words import Kind
from specwriter.reading import Paragraph, Piece
from specwriter.reading.fields import counts_pages

_SEQUENCE = re.compile(r"\s*SEQ\s+(\w+)(?:\s+\\\*\s+\w+)*\s*", re.I)
_REFERENCE = re.compile(r"\s*REF\s+(\w+)((?:\s+\\[hrnw*](?:\s+[A-Z]\w+)?)*)\s*", re.I)
_BY_NUMBER = re.compile(r"\\[rnw]", re.I)
_AROUND = " .()"


@dataclass(frozen=True, slots=True, kw_only=True)
class _Target:
    """What a bookmark shows: the number of its paragraph and its words; empty where unsure.

    ``both`` is true where it stays whether the changes are accepted or rejected.
    """

    number: str = ""
    words: str = ""
    both: bool = False


@dataclass(slots=True)
class References:
    """The bookmarks of a redline, and the captions counted so far."""

    bookmarks: dict[str, int] = field(default_factory=dict)
    """The bookmarks that the redline writes: name → number."""
    _targets: dict[str, _Target] = field(default_factory=dict)
    _new_names: dict[str, str] = field(default_factory=dict)
    """Name of a bookmark in the old document → its name in the new one."""
    _counts: Counter[str] = field(default_factory=Counter)

    def learn_both(self, old: Paragraph, new: Paragraph, spans: Sequence[Span], shown: str) -> None:
        """The bookmarks of a paragraph that stays; ``shown`` is its number among all others."""
        number = shown if old.label == new.label == shown else ""
        stays = dict(_words(_pieces(spans, "equal")))
        seen = dict(_words(_pieces(spans, "equal", "added", "removed")))
        for name, words in _words(_pieces(spans, "equal", "added")):
            self._add(name, number, words if seen.get(name) == words else "", both=name in stays)
        was, now = _names(old.pieces), _names(new.pieces)
        if len(was) == len(now):
            self._new_names |= zip(was, now, strict=True)

    def learn_new(self, new: Paragraph, shown: str) -> None:
        """The bookmarks of a paragraph that comes."""
        for name, words in _words(new.pieces):
            self._add(name, new.label if new.label == shown else "", words, both=False)

    def _add(self, name: str, number: str, words: str, *, both: bool) -> None:
        self.bookmarks[name] = len(self.bookmarks) + 1
        self._targets[name] = _Target(number=number, words=words, both=both)

    def settled(self, pieces: Iterable[Piece], kind: Kind) -> Iterator[Piece]:
        """Pieces of a span, with fields only where they show what they should."""
        for piece in pieces:
            if not piece.field or counts_pages(piece.field) or self._counts_on(piece, kind):
                yield piece
            else:
                yield replace(piece, field=self._reference(piece, kind))

    def _counts_on(self, piece: Piece, kind: Kind) -> bool:
        """Whether a caption is the next one among those that stay fields."""
        found = _SEQUENCE.fullmatch(piece.field)
        if not found or kind != "equal" or piece.text != str(self._counts[found[1]] + 1):
            return False
        self._counts[found[1]] += 1
        return True

    def _reference(self, piece: Piece, kind: Kind) -> str:
        """The instruction of a reference that shows its text in every state; else nothing."""
        found = _REFERENCE.fullmatch(piece.field)
        if not found:
            return ""
        name = self._new_names.get(found[1], "") if kind == "removed" else found[1]
        target = self._targets.get(name)
        if target is None or not (target.both or kind == "added"):
            return ""
        shown = target.number if _BY_NUMBER.search(found[2]) else target.words
        if not shown or shown.strip(_AROUND) != piece.shown.strip(_AROUND):
            return ""
        return piece.field[: found.start(1)] + name + piece.field[found.end(1) :]


def without_fields(pieces: Iterable[Piece]) -> tuple[Piece, ...]:
    """Pieces with what their fields show, but for those that count pages."""
    return tuple(p if counts_pages(p.field) else replace(p, field="") for p in pieces)


def _pieces(spans: Iterable[Span], *kinds: Kind) -> Iterator[Piece]:
    """The pieces of some spans; bookmarks of the old document are not written."""
    for span in spans:
        if span.kind in kinds:
            gone = span.kind == "removed"
            yield from (replace(p, opens=(), closes=()) if gone else p for p in span.pieces)


def _names(pieces: Iterable[Piece]) -> list[str]:
    return [name for piece in pieces for name in piece.opens]


def _words(pieces: Iterable[Piece]) -> Iterator[tuple[str, str]]:
    """The bookmarks that begin and end among the pieces, with the text inside."""
    inside: dict[str, str] = {}
    for piece in pieces:
        inside |= dict.fromkeys(piece.opens, "")
        inside = {name: words + piece.shown for name, words in inside.items()}
        yield from ((name, inside.pop(name)) for name in piece.closes if name in inside)
