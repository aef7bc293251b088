"""Words that stay and look otherwise: bold, slanted, struck out ..., told in words."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import groupby

from specwriter.compare.text.form import look, with_looks_before
from specwriter.compare.text.pairs import Match, Rewritten
from specwriter.reading import Piece

_NAMES = {
    "b": "bold",
    "i": "italic",
    "u": "underlined",
    "strike": "struck out",
    "dstrike": "struck out twice",
    "caps": "in capitals",
    "smallCaps": "in small capitals",
}
_VALUED = {
    "vertAlign": "set as {}",
    "color": "in the color {}",
    "highlight": "highlighted in {}",
    "rStyle": "in the style {}",
}


def looks_otherwise(part: Match | Rewritten) -> Iterator[tuple[str, str, str]]:
    """Each stretch of words with another look: the words, how they looked, how they look."""
    if isinstance(part, Rewritten):
        pieces = [piece for span in part.spans if span.kind == "equal" for piece in span.pieces]
    elif [(p.text, p.form) for p in part.old.pieces] == [(p.text, p.form) for p in part.new.pieces]:
        return
    else:
        pieces = [*with_looks_before(part.old.pieces, part.new.pieces)]
    for (was, now), run in groupby(pieces, key=_looks):
        words = "".join(piece.shown for piece in run)
        if was != now and words.strip():
            yield words, was, now


def _looks(piece: Piece) -> tuple[str, str]:
    now = _said(piece.form)
    return (now if piece.before is None else _said(piece.before)), now


def _said(form: str) -> str:
    """A look in words, such as ``bold and italic``."""
    words = [
        _NAMES[name] if name in _NAMES else _VALUED[name].format(value)
        for name, value in sorted(look(form))
    ]
    return " and ".join(words) or "plain"
