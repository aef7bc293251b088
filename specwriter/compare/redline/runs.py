"""Pieces of text as runs."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Mapping
from types import MappingProxyType
from xml.sax.saxutils import escape, quoteattr

from specwriter.reading import Piece

_SIGNS = {"\t": "<w:tab/>", "\n": "<w:br/>"}
_SPLIT = re.compile("([\t\n])")
_FORBIDDEN = re.compile("[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\U00010000-\U0010ffff]")


def runs(
    pieces: Iterable[Piece],
    *,
    deleted: bool = False,
    bookmarks: Mapping[str, int] = MappingProxyType({}),
    look: Callable[[str], str] = str,
) -> str:
    """The runs of some pieces; what is deleted has an element of its own for its text.

    ``bookmarks`` gives the numbers of those that are written, ``look`` the mark of a changed look.
    """
    element = "delText" if deleted else "t"
    return "".join(
        _begins(piece, bookmarks) + _linked(piece, element, look) + _ends(piece, bookmarks)
        for piece in pieces
    )


def _begins(piece: Piece, bookmarks: Mapping[str, int]) -> str:
    return "".join(
        f'<w:bookmarkStart w:id="{bookmarks[name]}" w:name={quoteattr(name)}/>'
        for name in piece.opens
        if name in bookmarks
    )


def _ends(piece: Piece, bookmarks: Mapping[str, int]) -> str:
    ids = (bookmarks[name] for name in piece.closes if name in bookmarks)
    return "".join(f'<w:bookmarkEnd w:id="{id}"/>' for id in ids)


def _linked(piece: Piece, element: str, look: Callable[[str], str]) -> str:
    run = _run(piece, element, look)
    return f"{piece.link}{run}</w:hyperlink>" if piece.link and run else run


def _run(piece: Piece, element: str, look: Callable[[str], str]) -> str:
    form = piece.form + ("" if piece.before is None else look(piece.before))
    form = f"<w:rPr>{form}</w:rPr>" if form else ""
    if piece.field:
        return _field(piece, element, form)
    if piece.thing.startswith("<m:"):
        return piece.thing
    inner = piece.thing or "".join(_part(part, element) for part in _SPLIT.split(piece.text))
    return f"<w:r>{form}{inner}</w:r>" if inner else ""


def _field(piece: Piece, element: str, form: str) -> str:
    """A field in full; what it shows is worked out anew by every program."""
    code = "delInstrText" if element == "delText" else "instrText"
    shown = "".join(_part(part, element) for part in _SPLIT.split(piece.text))
    inner = (
        '<w:fldChar w:fldCharType="begin"/>',
        f'<w:{code} xml:space="preserve">{escape(piece.field)}</w:{code}>',
        '<w:fldChar w:fldCharType="separate"/>',
        shown,
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
