"""A cross-section of grooves, to scale, with dimension lines."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import accumulate, chain

from specwriter.assemble.document import Dimension, Section
from specwriter.render.figure.shapes import (
    CONCRETE,
    CONCRETE_EDGE,
    FAINT,
    Point,
    label,
    level,
    line,
    polygon,
    polyline,
    text_width,
    upright,
)

_ROW = 32.0
"""Height of a row of level dimensions above the surface."""

_BODY = 70.0
"""Concrete shown below the bottom of the grooves."""

_DEEPEST = 110.0
_EDGE = 24.0
_LEVEL = ("groove.spacing", "land.width", "groove.clear_gap", "groove.width")
"""From the lowest row to the highest: what stands farther left is drawn higher, so that no
extension line crosses a label."""

_DEPTHS = ("groove.depth", "groove.depth_on_bridges", "groove.depth_over_loops")


@dataclass(frozen=True, slots=True)
class _Layout:
    """Where the grooves stand on the paper; ``grooves`` are (left, right) at the surface."""

    left: float
    right: float
    surface: float
    bottom: float
    grooves: tuple[tuple[float, float], ...]
    taper: float
    """How far each side of a groove leans in on its way down."""
    ripple: float


def section_strokes(
    section: Section, dimensions: Sequence[Dimension], width: float
) -> tuple[list[str], float]:
    """The strokes of a cross-section, and its height; equal scale in both directions."""
    by_key = {each.at: each for each in dimensions}
    rows = [key for key in _LEVEL if key in by_key]
    depths = [by_key[key] for key in _DEPTHS if key in by_key]
    ridge = by_key.get("ridge.height")
    left = _EDGE + (_side_width([ridge]) if ridge else 0)
    right = width - _EDGE - _side_width(depths)
    scale = _scale(section, right - left)
    at = _layout(section, left, len(rows) * _ROW + 24, scale)
    strokes = list(_concrete(at))
    for place, key in enumerate(rows):
        strokes += _level_dimension(by_key[key], key, at, at.surface - 18 - place * _ROW, width)
    strokes += _depth(depths, at) if depths else ()
    strokes += _ridge(ridge, at) if ridge else ()
    if "groove.width_at_bottom" in by_key:
        strokes += _bottom_width(by_key["groove.width_at_bottom"], at)
    height = at.bottom + _BODY + 22
    strokes += _bar(section, scale, at, height)
    return strokes, height + 18


def _side_width(dimensions: Sequence[Dimension]) -> float:
    texts = [text for each in dimensions for text in (each.name, each.label)]
    return 34 + max(map(text_width, texts), default=0)


def _scale(section: Section, room: float) -> float:
    """Units of the drawing for one millimetre."""
    return min(room / _length(section), _DEEPEST / section.depth)


def _length(section: Section) -> float:
    """The grooves, their lands, and half a land at each end."""
    lands = section.lands
    ends = (lands[0] + lands[-1]) / 2
    return section.width * (len(lands) + 1) + sum(lands) + ends


def _layout(section: Section, left: float, surface: float, scale: float) -> _Layout:
    steps = (section.width + land for land in section.lands)
    starts = accumulate(steps, initial=section.lands[0] / 2)
    grooves = tuple((left + x * scale, left + (x + section.width) * scale) for x in starts)
    return _Layout(
        left=left,
        right=left + _length(section) * scale,
        surface=surface,
        bottom=surface + section.depth * scale,
        grooves=grooves,
        taper=(section.width - section.bottom) / 2 * scale,
        ripple=section.ripple * scale,
    )


def _concrete(at: _Layout) -> Iterator[str]:
    top = [(at.left, at.surface), *chain.from_iterable(_profile(at)), (at.right, at.surface)]
    base, middle = at.bottom + _BODY, (at.left + at.right) / 2
    bend = ((8, 0), (4, -9), (-4, 9), (-8, 0))
    broken = [(at.right, base), *((middle + x, base + y) for x, y in bend), (at.left, base)]
    yield polygon([*top, *broken], CONCRETE)
    yield polyline(broken, colour=FAINT, width=0.8)
    yield polyline(top, colour=CONCRETE_EDGE)


def _profile(at: _Layout) -> Iterator[list[Point]]:
    """The surface from left to right: land, groove, land, ..."""
    last = at.left
    for a, b in at.grooves:
        yield _land(last, a, at)
        yield [(a, at.surface), (a + at.taper, at.bottom), (b - at.taper, at.bottom)]
        yield [(b, at.surface)]
        last = b
    yield _land(last, at.right, at)


def _land(a: float, b: float, at: _Layout) -> list[Point]:
    """A land; a fine ground texture is indicated by shallow notches of its true pitch."""
    if not at.ripple:
        return [(a, at.surface)]
    count = int((b - a) / at.ripple)
    start = a + (b - a - count * at.ripple) / 2
    notches: list[Point] = []
    for i in range(count):
        x = start + i * at.ripple
        notches += [
            (x + at.ripple * 0.12, at.surface),
            (x + at.ripple * 0.2, at.surface + 2.2),
            (x + at.ripple * 0.8, at.surface + 2.2),
            (x + at.ripple * 0.88, at.surface),
        ]
    return notches


def _level_dimension(
    each: Dimension, key: str, at: _Layout, y: float, width: float
) -> Iterator[str]:
    x1, x2 = _span(key, at)
    for x in (x1, x2):
        centred = key == "groove.spacing"
        lowest = at.bottom + 10 if centred else at.surface - 3
        yield line(
            (x, y - 5), (x, lowest), colour=FAINT, width=0.7, dash="9 3 2 3" if centred else ""
        )
    strokes, text_at = level(x1, x2, y)
    yield strokes
    text = f"{each.name} {each.label}"
    room = x2 - x1 - 24
    if text_width(text) < room:
        yield label(((x1 + x2) / 2, y), text, anchor="middle", back="#ffffff")
    elif text_at + text_width(text) < width - 4:
        yield label((text_at, y), text)
    else:
        yield label(((x1 + x2) / 2, y - 14), text, anchor="middle", back="#ffffff")


def _span(key: str, at: _Layout) -> tuple[float, float]:
    """From where to where a level dimension goes."""
    grooves = at.grooves
    if key == "groove.width":
        return grooves[0]
    if key == "groove.spacing":
        a, b = grooves[-2:] if len(grooves) > 3 else grooves[1:3]
        return sum(a) / 2, sum(b) / 2
    return grooves[0][1], grooves[1][0]


def _depth(depths: Sequence[Dimension], at: _Layout) -> Iterator[str]:
    x = at.right + 16
    inner = at.grooves[-1][1]
    yield line((at.right + 3, at.surface), (x + 6, at.surface), colour=FAINT, width=0.7)
    yield line((inner - at.taper + 3, at.bottom), (x + 6, at.bottom), colour=FAINT, width=0.7)
    yield upright(x, at.surface, at.bottom)
    y = (at.surface + at.bottom) / 2 - 9
    for each in depths:
        yield label((x + 14, y), each.name)
        yield label((x + 14, y + 18), each.label)
        y += 42


def _ridge(ridge: Dimension, at: _Layout) -> Iterator[str]:
    x = at.left - 14
    inner = at.grooves[0][0]
    yield line((at.left - 3, at.surface), (x - 6, at.surface), colour=FAINT, width=0.7)
    yield line((inner - 3, at.bottom), (x - 6, at.bottom), colour=FAINT, width=0.7)
    yield upright(x, at.surface, at.bottom)
    y = (at.surface + at.bottom) / 2 - 9
    yield label((x - 12, y), ridge.name, anchor="end")
    yield label((x - 12, y + 18), ridge.label, anchor="end")


def _bottom_width(each: Dimension, at: _Layout) -> Iterator[str]:
    a, b = at.grooves[1]
    y = at.bottom + 26
    x1, x2 = a + at.taper, b - at.taper
    for x in (x1, x2):
        yield line((x, at.bottom + 3), (x, y + 5), colour=FAINT, width=0.7)
    strokes, text_at = level(x1, x2, y)
    yield strokes
    yield label((text_at, y), f"{each.name} {each.label}")


def _bar(section: Section, scale: float, at: _Layout, y: float) -> Iterator[str]:
    length, text = section.bar
    end = at.left + length * scale
    for x in (at.left, end):
        yield line((x, y - 4), (x, y + 4), width=1.2)
    yield line((at.left, y), (end, y), width=1.2)
    yield label((end + 8, y), text, grey=True)
