"""One paragraph in two versions, word by word."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Literal

from specwriter.compare.text.form import with_looks_before
from specwriter.compare.text.sequence import equal_stretches, gaps
from specwriter.reading import Paragraph, Piece, with_plain_hyphens

_TOKEN = re.compile(
    r"\ufffc"  # a picture is one token
    r"|\d+(?:[.,/:+-]\d+)*"  # 0.125, 3/16, 1-1/2, 1,000, 120+00 stay whole
    r"|[^\W\d_]+(?:['’/-][^\W\d_]+)*"  # in/mi stays whole too
    r"|\s+|.",
    re.DOTALL,
)
_IDENTITY = re.compile(r' (?:[a-z]\w*:)?(?:id|embed|link|anchorId|editId)="[^"]*"')
"""What tells two copies of one picture apart: places in their files, nothing that is seen."""

_GLUE = frozenset({"a", "an", "and", "at", "by", "in", "is", "of", "on", "or", "the", "to"})
_FEW = 3
"""An island of that many glue words between two changes is taken into them."""

Kind = Literal["equal", "removed", "added"]


@dataclass(frozen=True, slots=True)
class Span:
    """A stretch of a paragraph that stays, goes or comes."""

    kind: Kind
    pieces: tuple[Piece, ...]

    @property
    def text(self) -> str:
        """Its text."""
        return with_plain_hyphens("".join(piece.text for piece in self.pieces))

    @property
    def shown(self) -> str:
        """Its text with the descriptions of pictures."""
        return "".join(piece.shown for piece in self.pieces)


def likeness(piece: Piece) -> str:
    """What a picture or note shows, without its place in the file.

    Each office program writes the frame of a picture in its own way; its description stays.
    """
    described = piece.shown
    return (
        described if described not in ("", "[figure]", "[note]") else _IDENTITY.sub("", piece.thing)
    )


def tokens(text: str) -> list[str]:
    """Words, numbers, spaces and signs; together they are the text."""
    return _TOKEN.findall(text)


def compare_words(old: Paragraph, new: Paragraph) -> tuple[Span, ...]:
    """The paragraph as spans; in each change what goes stands before what comes.

    Equal spans carry the form of the new paragraph, and its look before where that changed.
    """
    was, now = tokens(old.text), tokens(new.text)
    before, after = _Cutter(old.pieces, was), _Cutter(new.pieces, now)
    keys = [_keys(was, before), _keys(now, after)]
    equal = _with_islands_taken_in(equal_stretches(*keys), was)
    spans: list[Span] = []
    for (a, b, c, d), (*kept, e, f) in gaps(equal, len(was), len(now)):
        spans += _span("removed", before.between(a, b))
        spans += _span("added", after.between(c, d))
        spans += _span("equal", with_looks_before(before.between(*kept), after.between(e, f)))
    return tuple(spans)


def _span(kind: Kind, pieces: tuple[Piece, ...]) -> Iterator[Span]:
    if pieces:
        yield Span(kind, pieces)


def _keys(words: Sequence[str], cutter: _Cutter) -> list[str]:
    """What is compared: the words, and for a picture its XML."""
    if "\ufffc" not in words:
        return list(words)
    return [cutter.thing(i) if word == "\ufffc" else word for i, word in enumerate(words)]


def _with_islands_taken_in(
    stretches: Sequence[tuple[int, int, int, int]], words: Sequence[str]
) -> list[tuple[int, int, int, int]]:
    """Equal stretches without those of mere spaces and glue words between two changes."""
    last = len(stretches) - 1
    return [
        each
        for place, each in enumerate(stretches)
        if not (_between_changes(place, last, stretches, words) and _is_island(each, words))
    ]


def _between_changes(
    place: int, last: int, stretches: Sequence[tuple[int, int, int, int]], words: Sequence[str]
) -> bool:
    first_is_first = stretches[place][0] == 0 and stretches[place][2] == 0
    last_is_last = place == last and stretches[place][1] == len(words)
    return not first_is_first and not last_is_last


def _is_island(stretch: tuple[int, int, int, int], words: Sequence[str]) -> bool:
    inside = words[stretch[0] : stretch[1]]
    glue = [word for word in inside if not word.isspace()]
    return len(glue) <= _FEW and all(word.lower() in _GLUE for word in glue)


class _Cutter:
    """Cuts the pieces of a paragraph at its tokens."""

    def __init__(self, pieces: Sequence[Piece], words: Sequence[str]) -> None:
        self._pieces = pieces
        self._starts = [0]
        for word in words:
            self._starts.append(self._starts[-1] + len(word))

    def between(self, first: int, last: int) -> tuple[Piece, ...]:
        """The pieces from token ``first`` up to ``last``."""
        if first == last:
            return ()
        return tuple(self._pieces_between(self._starts[first], self._starts[last]))

    def thing(self, token: int) -> str:
        """The picture at a token."""
        return "".join(likeness(piece) for piece in self.between(token, token + 1))

    def _pieces_between(self, start: int, end: int) -> Iterator[Piece]:
        place = 0
        for piece in self._pieces:
            stop = place + len(piece.text)
            if place < end and stop > start:
                yield piece.part(max(0, start - place), min(end, stop) - place)
            if stop >= end:
                return
            place = stop
