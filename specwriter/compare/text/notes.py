"""Footnotes and endnotes, matched by the places in the text that refer to them."""

from __future__ import annotations

import re
from collections import defaultdict
from collections.abc import Iterable, Iterator

from specwriter.compare.text.pairs import (
    Added,
    Match,
    MatchedTable,
    Part,
    Removed,
    Rewritten,
)
from specwriter.reading import Block, Piece
from specwriter.reading.block import paragraphs

REFERENCE = re.compile(r'<w:(footnote|endnote)Reference\b[^>]*\bw:id="(-?\d+)"')
"""A reference to a note: its kind and its number in the file."""

Note = tuple[str, str]
"""``footnote`` or ``endnote``, and its number in the file."""


def note_of(thing: str) -> Note | None:
    """The note that a thing in the text refers to."""
    found = REFERENCE.search(thing) if "Reference" in thing else None
    return (found[1], found[2]) if found else None


def note_pairs(parts: Iterable[Part]) -> Iterator[tuple[Note | None, Note | None]]:
    """Old note and new note of each reference; ``None`` on the side that has none."""
    gone: dict[int, list[Note]] = defaultdict(list)
    come: dict[int, list[Note]] = defaultdict(list)
    for part in _flat(parts):
        match part:
            case Match():
                yield from zip(_notes(part.old.pieces), _notes(part.new.pieces), strict=True)
            case Rewritten():
                yield from _rewritten(part)
            case Removed():
                gone[part.move] += _in_block(part.block)
            case Added():
                come[part.move] += _in_block(part.block)
    for move in {**gone, **come}:
        was, now = gone[move], come[move]
        if move and len(was) == len(now):
            yield from zip(was, now, strict=True)
        else:
            yield from ((note, None) for note in was)
            yield from ((None, note) for note in now)


def _flat(parts: Iterable[Part]) -> Iterator[Part]:
    """The parts, those in cells and rows of tables too."""
    for part in parts:
        if not isinstance(part, MatchedTable):
            yield part
            continue
        for row in part.rows:
            for cell in row.cells:
                yield from _flat(cell)
            if row.old is None or row.new is None:
                for side, kind in ((row.old, Removed), (row.new, Added)):
                    for each in side.cells if side else ():
                        yield from (kind(block=block) for block in each.blocks)


def _rewritten(part: Rewritten) -> Iterator[tuple[Note | None, Note | None]]:
    was = iter(_notes(part.old.pieces))
    for span in part.spans:
        for note in _notes(span.pieces):
            if span.kind == "equal":
                yield next(was, None), note
            elif span.kind == "added":
                yield None, note
            else:
                yield next(was, None), None


def _in_block(block: Block) -> list[Note]:
    return [note for each in paragraphs((block,)) for note in _notes(each.pieces)]


def _notes(pieces: Iterable[Piece]) -> list[Note]:
    return [note for piece in pieces if piece.thing and (note := note_of(piece.thing))]
