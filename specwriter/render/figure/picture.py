"""SVG → PNG. The font lies beside this file, so that every computer draws the same bytes."""

from __future__ import annotations

import struct
from functools import lru_cache
from pathlib import Path

from specwriter.assemble.document import Figure
from specwriter.render.figure.draw import figure_svg

_FONT = Path(__file__).parent / "font" / "LiberationSans-Regular.ttf"
_NAMESPACE = '<svg xmlns="http://www.w3.org/2000/svg" '
"""A web page needs no namespace for an SVG element, a file of its own does."""

_ZOOM = 3.0
"""Pixels for each unit of the drawing: 720 units on 6 inches of paper give 360 dots per inch."""


def figure_png(figure: Figure) -> bytes:
    """The figure as PNG, at 360 dots per inch on six inches of paper."""
    return _drawn(figure_svg(figure))


def pixels(png: bytes) -> tuple[int, int]:
    """Width and height that a PNG states in its header."""
    width, height = struct.unpack(">II", png[16:24])
    return width, height


@lru_cache(maxsize=32)
def _drawn(svg: str) -> bytes:
    import resvg_py

    # Without its font the library draws no text and says nothing.
    if not _FONT.is_file():
        raise FileNotFoundError(f"the font of the figures is missing: {_FONT}")
    made = resvg_py.svg_to_bytes(
        svg_string=svg.replace("<svg ", _NAMESPACE, 1),
        zoom=_ZOOM,
        skip_system_fonts=True,
        font_files=[str(_FONT)],
    )
    return bytes(made)
