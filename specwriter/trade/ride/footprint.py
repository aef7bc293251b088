"""Roughness that a height sensor reads into grooves along the lane, because the vehicle wanders.

The spot of the sensor drifts over grooves and lands, and their slow alternation looks like waves
of the road. A sensor that takes the mean over a width across the lane sees less of it. Lengths in
metres, result a slope.
"""

from __future__ import annotations

from functools import lru_cache
from itertools import accumulate
from math import floor, pi, sin

from specwriter.trade.formula import Formula
from specwriter.trade.ride.periodic import SAMPLE, roughness_of_period
from specwriter.trade.ride.roughness import AVERAGING

FALSE_ROUGHNESS = Formula(
    text="roughness of the depth seen under a sensor that wanders 2, 4 and 8 in (50, 100 and 200 "
    "mm) to both sides over 138 ft (42 m), mean of the three",
    source="project calculation: quarter-car of AASHTO R 43-13(2017), section 3.1.3; "
    "UCD-ITS-RR-22-71, 2022: texture can raise the index read by a point laser",
    validity="an upper bound: square grooves, no filter of the profiler, the mean over the width "
    "and no bridging; a width of a whole number of spacings sees nothing, by luck",
)

WANDERS = (0.05, 0.10, 0.20)
"""How far the vehicle leaves its line to each side, metres. Common practice, no source."""

WAVE = 42.0
"""Length over which it does so, metres. Common practice, no source."""

_FINE = 0.005
_ALONG = round(SAMPLE / _FINE)
_TYRE = round(AVERAGING / _FINE)


@lru_cache(maxsize=64)
def false_roughness(width: float, depth: float, spacing: float, footprint: float) -> float:
    """Roughness read into a level road with such grooves: ``FALSE_ROUGHNESS``.

    ``footprint`` is the width across the lane over which the sensor takes the mean; 0 is a spot.
    """
    read = (_read(width, depth, spacing, footprint, wander) for wander in WANDERS)
    return sum(read) / len(WANDERS)


def _read(width: float, depth: float, spacing: float, footprint: float, wander: float) -> float:
    count = round(WAVE / _FINE)
    heights = [
        _height(wander * sin(2 * pi * index / count), width, depth, spacing, footprint)
        for index in range(count)
    ]
    seen = _averaged(_averaged(heights, _ALONG), _TYRE)

    def elevation(position: float) -> float:
        return seen[round(position / _FINE) % count]

    return roughness_of_period(elevation, WAVE)


def _height(across: float, width: float, depth: float, spacing: float, footprint: float) -> float:
    """Height seen at a place across the lane: of the spot, or the mean over the footprint."""
    if not footprint:
        return -depth if across % spacing < width else 0.0
    left, right = across - footprint / 2, across + footprint / 2
    return -depth * (_cut(right, width, spacing) - _cut(left, width, spacing)) / footprint


def _cut(across: float, width: float, spacing: float) -> float:
    """Width of all grooves between the line and a place across the lane."""
    whole = floor(across / spacing)
    return whole * width + min(across - whole * spacing, width)


def _averaged(heights: list[float], points: int) -> list[float]:
    """Moving average over a road that repeats itself."""
    sums = [0.0, *accumulate([*heights, *heights[:points]])]
    return [(sums[i + points] - sums[i]) / points for i in range(len(heights))]
