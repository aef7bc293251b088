"""A figure → SVG: one function for every kind of drawing."""

from __future__ import annotations

from itertools import chain
from textwrap import wrap

from specwriter.assemble.document import Figure, Section
from specwriter.render.figure.plan import plan_strokes
from specwriter.render.figure.section import section_strokes
from specwriter.render.figure.shapes import label, picture

WIDTH = 720.0
"""Width of every drawing, in its own units."""

_NOTE = 96
"""Letters on a line of a note, at most."""


def figure_svg(figure: Figure) -> str:
    """The figure as one SVG element; labels stand in it as the job writes them."""
    if isinstance(figure.drawing, Section):
        strokes, height = section_strokes(figure.drawing, figure.dimensions, WIDTH)
    else:
        strokes, height = plan_strokes(figure.drawing, figure.dimensions, WIDTH)
    for line in chain.from_iterable(wrap(note, _NOTE) for note in figure.notes):
        strokes.append(label((24, height + 9), line, grey=True))
        height += 20
    return picture(WIDTH, height + 6, figure.description, strokes)
