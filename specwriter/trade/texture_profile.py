"""What a profile reads on grooves: mean profile depth along a line, and on the circular track.

Ideal square grooves with smooth lands, no filter; the instrument is laid down at every place of
one spacing in turn. Lengths in mm, angles in degrees between the line and the grooves.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache
from math import pi, radians, sin

from specwriter.trade.formula import Formula

READING = Formula(
    text="mean profile depth = mean of the highest points of two halves of 100 mm, over the mean, "
    "slope removed",
    source="ASTM E1845-15 (baseline of 100 mm, two halves) and project calculation",
    validity="ideal square grooves with smooth lands, no filter; the practice itself warns about "
    "grooved surfaces",
)

CIRCLE = Formula(
    text="mean of the profile depths of 8 arcs of 111.5 mm on a circle of 284 mm",
    source="FHWA information sheet on the circular texture meter, undated (geometry), and project "
    "calculation",
    validity=READING.validity,
)

_BASE, _STEP, _PLACES = 100.0, 0.5, 200
_RADIUS, _ARCS, _POINTS, _SPOTS = 142.0, 8, 128, 60


@dataclass(frozen=True, slots=True, kw_only=True)
class Circle:
    """Least and greatest readings over all places: the mean of 8, and of the 2 arcs alone whose
    tangent runs along the grooves."""

    mean_of_eight: tuple[float, float]
    along_pair: tuple[float, float]


@lru_cache(maxsize=64)
def on_a_line(width: float, depth: float, spacing: float, angle: float) -> float:
    """Mean profile depth over all places of a straight line; 0 along the grooves."""
    crossing = sin(radians(angle))
    if crossing < 1e-9:
        return 0.0
    count = round(_BASE / _STEP)
    steps = [(index + 0.5) * _STEP * crossing for index in range(count)]
    total = 0.0
    for place in range(_PLACES):
        start = (place + 0.5) / _PLACES * spacing
        total += profile_depth([_height(start + at, width, depth, spacing) for at in steps])
    return total / _PLACES


@lru_cache(maxsize=64)
def on_a_circle(width: float, depth: float, spacing: float) -> Circle:
    """Readings of the circular track meter over all places."""
    means, pairs = [], []
    for spot in range(_SPOTS):
        start = (spot + 0.5) / _SPOTS * spacing
        arcs = [_arc(number, start, width, depth, spacing) for number in range(_ARCS)]
        means.append(sum(arcs) / _ARCS)
        pairs.append((arcs[0] + arcs[_ARCS // 2]) / 2)
    return Circle(mean_of_eight=(min(means), max(means)), along_pair=(min(pairs), max(pairs)))


def profile_depth(heights: Sequence[float]) -> float:
    """Mean of the highest points of both halves, over the mean, after removing the slope."""
    count = len(heights)
    mean, middle = sum(heights) / count, (count - 1) / 2
    spread = sum((index - middle) ** 2 for index in range(count))
    slope = sum((index - middle) * (each - mean) for index, each in enumerate(heights)) / spread
    level = [each - mean - slope * (index - middle) for index, each in enumerate(heights)]
    half = count // 2
    return (max(level[:half]) + max(level[half:])) / 2


def _arc(number: int, start: float, width: float, depth: float, spacing: float) -> float:
    """Profile depth of one arc; the first has its tangent along the grooves."""
    middle = pi / 2 + number * 2 * pi / _ARCS
    turns = (((point + 0.5) / _POINTS - 0.5) * 2 * pi / _ARCS for point in range(_POINTS))
    across = (_RADIUS * sin(middle + turn) for turn in turns)
    return profile_depth([_height(start + at, width, depth, spacing) for at in across])


def _height(across: float, width: float, depth: float, spacing: float) -> float:
    return -depth if across % spacing < width else 0.0
