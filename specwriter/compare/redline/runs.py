"""Pieces of text as runs."""

from __future__ import annotations

import re
from collections.abc import Iterable
from xml.sax.saxutils import escape

from specwriter.reading import Piece

_SIGNS = {"\t": "<w:tab/>", "\n": "<w:br/>", "\u2011": "<w:noBreakHyphen/>"}
_SPLIT = re.compile("([\t\n\u2011])")
_FORBIDDEN = re.compile("[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\U00010000-\U0010ffff]")


def runs(pieces: Iterable[Piece], *, deleted: bool = False) -> str:
    """The runs of some pieces; what is deleted has an element of its own for its text."""
    return "".join(_run(piece, "delText" if deleted else "t") for piece in pieces)


def _run(piece: Piece, element: str) -> str:
    inner = piece.thing or "".join(_part(part, element) for part in _SPLIT.split(piece.text))
    if not inner:
        return ""
    form = f"<w:rPr>{piece.form}</w:rPr>" if piece.form else ""
    return f"<w:r>{form}{inner}</w:r>"


def _part(text: str, element: str) -> str:
    if not text:
        return ""
    if sign := _SIGNS.get(text):
        return sign
    # A control character in a text file would make Word refuse the whole redline.
    shown = _FORBIDDEN.sub("\ufffd", text)
    return f'<w:{element} xml:space="preserve">{escape(shown)}</w:{element}>'
