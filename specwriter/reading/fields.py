"""Fields of a paragraph: what they show is its text, their instructions are not."""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field

from specwriter.reading.block import Piece, State

_PAGES = re.compile(r"\s*(?:PAGE|NUMPAGES|SECTIONPAGES)\b", re.I)
_COUNTED = re.compile(r"\s*(?:REF|SEQ)\s", re.I)


@dataclass(slots=True)
class _Field:
    instruction: str = ""
    shows: bool = False
    result: list[Piece] = field(default_factory=list)


class Fields:
    """The fields that are open at one place of a paragraph, the outermost first."""

    def __init__(self) -> None:
        self._open: list[_Field] = []

    @property
    def hides(self) -> bool:
        """True inside an instruction, and in what a count of pages shows."""
        return any(not each.shows or counts_pages(each.instruction) for each in self._open)

    def take(self, kind: str | None, form: str, state: State) -> Sequence[Piece]:
        """A begin, separator or end; gives the pieces of a field that ends here."""
        if kind == "begin":
            self._open.append(_Field())
        elif kind == "separate" and self._open:
            self._open[-1].shows = True
        elif kind == "end" and self._open:
            ended = self._open.pop()
            if not self.hides:
                return self._outer(field_shown(ended.instruction, ended.result, form, state))
        return ()

    def keep(self, piece: Piece) -> Sequence[Piece]:
        """A piece of the text; inside a field it waits for the end of the field."""
        return () if self.hides else self._outer((piece,))

    def left(self) -> list[Piece]:
        """What the fields show that do not end in this paragraph."""
        return [piece for each in self._open for piece in each.result]

    def instruct(self, text: str) -> None:
        """A stretch of an instruction."""
        if self._open and not self._open[-1].shows:
            self._open[-1].instruction += text

    def _outer(self, pieces: Sequence[Piece]) -> Sequence[Piece]:
        if not self._open:
            return pieces
        self._open[-1].result.extend(pieces)
        return ()


def counts_pages(instruction: str | None) -> bool:
    """Whether a field counts pages, which every program does anew."""
    return bool(instruction and _PAGES.match(instruction))


def field_shown(
    instruction: str, result: Iterable[Piece], form: str = "", state: State = "kept"
) -> Sequence[Piece]:
    """A field as one piece where it counts or refers, else what it shows."""
    if counts_pages(instruction):
        return (Piece("#", form, state, field=instruction),)
    pieces = tuple(result)
    words = [piece for piece in pieces if piece.text]
    is_whole = bool(words) and len({piece.state for piece in words}) == 1
    if not is_whole or not _COUNTED.match(instruction) or any(p.thing or p.field for p in words):
        return pieces
    return (
        Piece(
            "".join(piece.text for piece in words),
            words[0].form,
            words[0].state,
            field=instruction,
            opens=tuple(name for piece in pieces for name in piece.opens),
            closes=tuple(name for piece in pieces for name in piece.closes),
        ),
    )
