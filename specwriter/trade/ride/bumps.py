"""Single bumps: their profiles, and the roughness over a short base that they make alone.

Lengths and heights in metres. Source: project calculation with the quarter-car of ASTM E1926.
"""

from __future__ import annotations

from collections.abc import Callable
from functools import lru_cache
from math import cos, pi

from specwriter.trade.ride.periodic import SAMPLE
from specwriter.trade.ride.roughness import BASE, motion, running

Shape = Callable[[float], float]
"""Height, as a share of the whole, at a share from 0 to 1 of the length."""

_LEAD = 15.0
_TAIL = 60.0

TEMPLATE = {"highway": 0.3 * 0.0254, "airfield": 0.4 * 0.0254}
"""Offset of a bump template over 25 ft, metres. Source: Florida DOT Standard Specifications,
400-15.2.5.5 (0.3 in); UFGS 32 02753 (0.4 in)."""

BUMP_LENGTHS = (1.0, 7.62)
"""Shortest and longest bump that a template of 25 ft is asked about, metres."""

LEAST_LOCALIZED, MOST_LOCALIZED = 0.2837, 0.4667
"""Least and most roughness over 25 ft of a haversine of those lengths, a slope per metre of its
height (456 and 751 in/mi for an inch): at 7.62 m and at 2.1 m."""


def haversine(share: float) -> float:
    """A rounded bump, level at both ends."""
    return (1 - cos(2 * pi * share)) / 2


def triangle(share: float) -> float:
    """Two straight ramps."""
    return 1 - abs(2 * share - 1)


def box(share: float) -> float:
    """A plate with upright edges."""
    return 1.0


def profile(shape: Shape, height: float, length: float, step: float = SAMPLE) -> list[float]:
    """Elevations every ``step`` of a level road with one bump on it."""
    lead, over = round(_LEAD / step), round(length / step)
    bump = [height * shape(index / over) for index in range(over)]
    return [0.0] * lead + bump + [0.0] * round(_TAIL / step)


@lru_cache(maxsize=256)
def localized(shape: Shape, length: float, base: float = BASE) -> float:
    """Highest roughness over a short base that the bump makes alone, per metre of height."""
    return max(running(motion(profile(shape, 1.0, length), SAMPLE), SAMPLE, base))
