"""Pieces as an office program split them → as few as tell the same."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import replace

from specwriter.reading.block import Piece


def joined(pieces: Iterable[Piece]) -> Iterator[Piece]:
    """Neighbours of one form and state as one piece.

    A piece without text says where bookmarks begin or end; its names go to the pieces beside it.
    A bookmark around nothing, or one that leaves its paragraph, is left out.
    """
    found: list[Piece] = []
    opening: list[str] = []
    for piece in pieces:
        if not piece.text:
            _close(found, opening, piece.closes)
            opening.extend(piece.opens)
            continue
        if opening:
            piece, opening = replace(piece, opens=(*opening, *piece.opens)), []
        if found and _is_one(found[-1], piece):
            found[-1] = replace(found[-1], text=found[-1].text + piece.text, closes=piece.closes)
        else:
            found.append(piece)
    return iter(_whole(found))


def _close(found: list[Piece], opening: list[str], names: Iterable[str]) -> None:
    for name in names:
        if name in opening:
            opening.remove(name)
        elif found:
            found[-1] = replace(found[-1], closes=(*found[-1].closes, name))


def _is_one(last: Piece, piece: Piece) -> bool:
    same = (last.form, last.state, last.link) == (piece.form, piece.state, piece.link)
    if not same or last.closes or piece.opens:
        return False
    return not (last.thing or piece.thing or last.field or piece.field)


def _whole(pieces: list[Piece]) -> list[Piece]:
    opened = {name for piece in pieces for name in piece.opens}
    closed = {name for piece in pieces for name in piece.closes}
    if opened == closed:
        return pieces
    both = opened & closed
    return [
        replace(
            piece,
            opens=tuple(name for name in piece.opens if name in both),
            closes=tuple(name for name in piece.closes if name in both),
        )
        for piece in pieces
    ]
