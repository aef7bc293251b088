"""Text that stays with another look: bold, slanted, underlined, struck, raised or coloured."""

from __future__ import annotations

import re
from collections import deque
from collections.abc import Iterator, Sequence
from dataclasses import replace
from functools import lru_cache

from specwriter.reading import Piece

_LOOK = re.compile(
    r"<w:(b|i|u|strike|dstrike|caps|smallCaps|vertAlign|color|highlight|rStyle)"
    r'(?: w:val="([^"]*)")?[^>]*/>'
)
_OFF = frozenset({"0", "false", "off", "none", "auto", "baseline"})


@lru_cache(maxsize=1024)
def look(form: str) -> frozenset[tuple[str, str]]:
    """What a reader sees of a form; fonts and sizes belong to the frame and are left out."""
    found = ((name, val) for name, val in _LOOK.findall(form) if val not in _OFF)
    return frozenset((name, "" if val in ("1", "true", "on") else val) for name, val in found)


def with_looks_before(old: Sequence[Piece], new: Sequence[Piece]) -> tuple[Piece, ...]:
    """New pieces of the same text as the old ones, each with its form before its look changed."""
    if {look(piece.form) for piece in (*old, *new)} <= {frozenset()}:
        return tuple(new)
    return tuple(_compared(old, new))


def _compared(old: Sequence[Piece], new: Sequence[Piece]) -> Iterator[Piece]:
    waiting = deque(_ends(old))
    start = 0
    for piece in new:
        stop = start + len(piece.text)
        forms = []
        while waiting:
            end, form = waiting[0]
            forms.append((min(end, stop) - start, form))
            if end > stop:
                break
            waiting.popleft()
            if end == stop:
                break
        yield from _cut(piece, forms)
        start = stop


def _cut(piece: Piece, forms: Sequence[tuple[int, str]]) -> Iterator[Piece]:
    """The piece, cut only where that is needed to say how it looked."""
    if len({look(form) for _, form in forms}) == 1:
        yield _looked(piece, forms[0][1])
        return
    start = 0
    for end, form in forms:
        yield _looked(piece.part(start, end), form)
        start = end


def _looked(piece: Piece, form: str) -> Piece:
    return piece if look(form) == look(piece.form) else replace(piece, before=form)


def _ends(pieces: Sequence[Piece]) -> Iterator[tuple[int, str]]:
    """Where each piece ends, and its form."""
    place = 0
    for piece in pieces:
        place += len(piece.text)
        yield place, piece.form
