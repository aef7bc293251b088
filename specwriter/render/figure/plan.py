"""A plan of transverse grooves: which way they run and what is left uncut. It has no scale."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from math import radians, tan

from specwriter.assemble.document import Dimension, Plan
from specwriter.render.figure.shapes import (
    CONCRETE,
    CONCRETE_EDGE,
    FAINT,
    label,
    level,
    line,
    polygon,
    polyline,
    text_width,
    upright,
)

_TOP, _TALL, _EDGE, _JOINT = 44.0, 176.0, 26.0, 16.0
_STEP = 13.0
_CENTRE = "#9c1c1c"
_UNEVEN = (0.7, 1.5, 1.0, 1.7, 0.8, 1.3)
"""Gaps of a random pattern, in parts of the mean gap; an indication, not a layout."""


def plan_strokes(
    plan: Plan, dimensions: Sequence[Dimension], width: float
) -> tuple[list[str], float]:
    """The strokes of a plan and its height."""
    by_key = {each.at: each for each in dimensions}
    edge = by_key.get("coverage.edge_offset")
    texts = (edge.name, edge.label) if edge else ()
    left, right = 24.0, width - 56 - max(map(text_width, texts), default=0)
    strokes = list(_pavement(plan, left, right))
    strokes += _grooves(plan, left, right)
    strokes += _notes(plan, by_key, left, right)
    return strokes, _TOP + _TALL + 44


def _pavement(plan: Plan, left: float, right: float) -> Iterator[str]:
    corners = [(left, _TOP), (right, _TOP), (right, _TOP + _TALL), (left, _TOP + _TALL)]
    yield polygon(corners, CONCRETE)
    for y in (_TOP, _TOP + _TALL):
        yield polyline([(left, y), (right, y)], colour=CONCRETE_EDGE)
    if plan.joint:
        x = (left + right) / 2
        yield line((x, _TOP), (x, _TOP + _TALL), colour=CONCRETE_EDGE, width=2.2)


def _grooves(plan: Plan, left: float, right: float) -> Iterator[str]:
    """Fewer grooves than are cut, and none within the strips that are left uncut."""
    margin = _EDGE if plan.edge else 0.0
    top, bottom = _TOP + margin, _TOP + _TALL - margin
    lean = tan(radians(plan.skew)) * (bottom - top) / 2
    joint = (left + right) / 2
    x, place = left + _STEP / 2 + abs(lean), 0
    while x < right - _STEP / 2 - abs(lean):
        if not plan.joint or abs(x - joint) > _JOINT + abs(lean):
            yield line((x - lean, bottom), (x + lean, top), colour=CONCRETE_EDGE, width=1.5)
        x += _STEP * (_UNEVEN[place % len(_UNEVEN)] if plan.random else 1.0)
        place += 1
    middle = _TOP + _TALL / 2
    yield line((left - 12, middle), (right + 12, middle), colour=_CENTRE, dash="14 4 3 4")


def _notes(plan: Plan, by_key: dict[str, Dimension], left: float, right: float) -> Iterator[str]:
    below = _TOP + _TALL + 18
    yield label((left + 6, below), "centerline", grey=True)
    yield line((left + 76, below), (left + 110, below), colour=_CENTRE, dash="14 4 3 4")
    if edge := by_key.get("coverage.edge_offset"):
        yield from _edge(edge, right)
    if joint := by_key.get("coverage.joint_offset"):
        yield from _joint(joint, (left + right) / 2, below)
    skew = by_key.get("groove.skew")
    way = f"{skew.name} {skew.label}" if skew else "grooves transverse to the centerline"
    yield label((left + 6, _TOP - 18), way)


def _edge(edge: Dimension, x: float) -> Iterator[str]:
    for y in (_TOP, _TOP + _EDGE):
        yield line((x + 3, y), (x + 20, y), colour=FAINT, width=0.7)
    yield upright(x + 14, _TOP, _TOP + _EDGE)
    yield label((x + 32, _TOP + _EDGE / 2 - 9), edge.name)
    yield label((x + 32, _TOP + _EDGE / 2 + 9), edge.label)


def _joint(joint: Dimension, x: float, y: float) -> Iterator[str]:
    for side in (x, x + _JOINT):
        yield line((side, y - 16), (side, y + 6), colour=FAINT, width=0.7)
    strokes, text_at = level(x, x + _JOINT, y)
    yield strokes
    yield label((text_at, y), f"{joint.name} {joint.label}")
