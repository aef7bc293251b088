"""The strokes of a technical drawing as SVG text: lines, arrows, dimension lines, labels."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from html import escape

Point = tuple[float, float]

INK, FAINT, CONCRETE, CONCRETE_EDGE = "#1a1a1a", "#5a6470", "#dfe3e7", "#3c444d"
ARROW = 7.0
SIZE = 13.0
_LETTER = 0.52
"""Width of a letter in parts of its size; the mean of the labels' letters, found by trial."""


def text_width(text: str) -> float:
    """About how wide a label is."""
    return len(text) * SIZE * _LETTER


def line(a: Point, b: Point, *, colour: str = INK, width: float = 0.9, dash: str = "") -> str:
    """A straight line."""
    dashed = f' stroke-dasharray="{dash}"' if dash else ""
    return (
        f'<line x1="{_n(a[0])}" y1="{_n(a[1])}" x2="{_n(b[0])}" y2="{_n(b[1])}"'
        f' stroke="{colour}" stroke-width="{width}"{dashed}/>'
    )


def polygon(points: Iterable[Point], fill: str) -> str:
    """A filled outline without a stroke."""
    return f'<polygon points="{_path(points)}" fill="{fill}"/>'


def polyline(points: Iterable[Point], *, colour: str = INK, width: float = 1.6) -> str:
    """A bent line."""
    return (
        f'<polyline points="{_path(points)}" fill="none" stroke="{colour}"'
        f' stroke-width="{width}" stroke-linejoin="round"/>'
    )


def label(
    at: Point, text: str, *, anchor: str = "start", back: str = "", grey: bool = False
) -> str:
    """Text with its middle line at ``at``; ``back`` is the colour of a box behind it."""
    x, y = at
    width = text_width(text)
    left = {"start": x, "middle": x - width / 2, "end": x - width}[anchor]
    box = (
        f'<rect x="{_n(left - 3)}" y="{_n(y - 9)}" width="{_n(width + 6)}" height="18"'
        f' fill="{back}"/>'
        if back
        else ""
    )
    colour = FAINT if grey else INK
    return (
        f'{box}<text x="{_n(x)}" y="{_n(y + 4.5)}" font-size="{SIZE}" fill="{colour}"'
        f' text-anchor="{anchor}">{escape(text)}</text>'
    )


def arrow(tip: Point, towards: Point) -> str:
    """An arrow head at ``tip`` that points away from ``towards``; level or upright only."""
    (x, y), (tx, ty) = tip, towards
    dx, dy = (x > tx) - (x < tx), (y > ty) - (y < ty)
    back = (x - dx * ARROW, y - dy * ARROW)
    side = (dy * ARROW * 0.32, dx * ARROW * 0.32)
    corners = (tip, (back[0] + side[0], back[1] + side[1]), (back[0] - side[0], back[1] - side[1]))
    return polygon(corners, INK)


def level(x1: float, x2: float, y: float) -> tuple[str, float]:
    """A level dimension line, and the x from which its label may begin on the right.

    Where the arrows do not fit between, they stand outside and point inwards.
    """
    if x2 - x1 >= 3.2 * ARROW:
        middle = (x1 + x2) / 2
        heads = arrow((x1, y), (middle, y)) + arrow((x2, y), (middle, y))
        return line((x1, y), (x2, y)) + heads, x2 + 8
    out = 2.4 * ARROW
    heads = arrow((x1, y), (x1 - out, y)) + arrow((x2, y), (x2 + out, y))
    return line((x1 - out, y), (x2 + out, y)) + heads, x2 + out + 6


def upright(x: float, y1: float, y2: float) -> str:
    """An upright dimension line, with its arrows outside where they do not fit between."""
    if y2 - y1 >= 3.2 * ARROW:
        middle = (y1 + y2) / 2
        heads = arrow((x, y1), (x, middle)) + arrow((x, y2), (x, middle))
        return line((x, y1), (x, y2)) + heads
    out = 2.4 * ARROW
    heads = arrow((x, y1), (x, y1 - out)) + arrow((x, y2), (x, y2 + out))
    return line((x, y1 - out), (x, y2 + out)) + heads


def picture(width: float, height: float, title: str, strokes: Sequence[str]) -> str:
    """The whole SVG element, as a web page holds it; ``title`` is read aloud in its place."""
    head = (
        f'<svg viewBox="0 0 {_n(width)} {_n(height)}"'
        f' width="{_n(width)}" height="{_n(height)}" role="img" aria-label="{escape(title)}"'
        ' font-family="Liberation Sans, Arial, Helvetica, sans-serif">'
    )
    ground = f'<rect width="{_n(width)}" height="{_n(height)}" fill="#ffffff"/>'
    return "\n".join((head, ground, *strokes, "</svg>"))


def _path(points: Iterable[Point]) -> str:
    return " ".join(f"{_n(x)},{_n(y)}" for x, y in points)


def _n(number: float) -> str:
    """A coordinate with at most two decimals."""
    return f"{number:.2f}".rstrip("0").rstrip(".")
