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
    if piece.field:
        return _field(piece, element)
    if piece.thing.startswith("<m:"):
        return piece.thing
    inner = piece.thing or "".join(_part(part, element) for part in _SPLIT.split(piece.text))
    if not inner:
        return ""
    form = f"<w:rPr>{piece.form}</w:rPr>" if piece.form else ""
    return f"<w:r>{form}{inner}</w:r>"


def _field(piece: Piece, element: str) -> str:
    """A field in full; what it shows is worked out anew by every program."""
    form = f"<w:rPr>{piece.form}</w:rPr>" if piece.form else ""
    code = "delInstrText" if element == "delText" else "instrText"
    inner = (
        '<w:fldChar w:fldCharType="begin"/>',
        f'<w:{code} xml:space="preserve">{escape(piece.field)}</w:{code}>',
        '<w:fldChar w:fldCharType="separate"/>',
        _part(piece.text, element),
        '<w:fldChar w:fldCharType="end"/>',
    )
    return "".join(f"<w:r>{form}{each}</w:r>" for each in inner)


def _part(text: str, element: str) -> str:
    if not text:
        return ""
    if sign := _SIGNS.get(text):
        return sign
    # A control character in a text file would make Word refuse the whole redline.
    shown = _FORBIDDEN.sub("\ufffd", text)
    return f'<w:{element} xml:space="preserve">{escape(shown)}</w:{element}>'
