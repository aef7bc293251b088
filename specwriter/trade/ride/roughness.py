"""Roughness of a profile: averaging, start, index of a stretch and over a short base.

Source: ASTM E1926, as reproduced in published implementations (second-hand): a moving average
of 250 mm, the first state from the mean slope of the first 11 m, and the mean of the motion.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import accumulate, pairwise

from specwriter.trade.ride import FOOT
from specwriter.trade.ride.matrix import Vector
from specwriter.trade.ride.quarter_car import steady, transition

AVERAGING = 0.25
"""Length of the moving average that stands for the tyre's footprint, metres."""

START = 11.0
"""Length over which the mean slope starts the simulation, metres (half a second)."""

BASE = 25 * FOOT
"""Usual base length of localized roughness. Source: FHWA section 401.16, as reproduced
(second-hand); Oregon DOT U00745-IRI, 2015: 25.0 ft."""


def slopes(elevations: Sequence[float], step: float) -> list[float]:
    """Slopes of the profile after the moving average; one fewer for each point averaged.

    A profile sampled at 250 mm or coarser is taken as averaged by whoever sampled it.
    """
    points = max(1, round(AVERAGING / step))
    sums = [0.0, *accumulate(elevations)]
    means = [(sums[i + points] - sums[i]) / points for i in range(len(elevations) - points + 1)]
    return [(after - before) / step for before, after in pairwise(means)]


def first_state(road: Sequence[float], step: float) -> Vector:
    """The state in which the car enters: at rest on the mean slope of the first 11 m."""
    entry = road[: max(1, round(START / step))]
    return steady(sum(entry) / len(entry))


def motion(elevations: Sequence[float], step: float) -> list[float]:
    """How far the suspension moves at each step, as a slope without sign.

    ``elevations`` in metres every ``step`` metres. Raises ``ValueError`` for a profile that is
    not longer than the moving average.
    """
    road = slopes(elevations, step)
    if not road:
        raise ValueError("the profile is not longer than the moving average of 250 mm")
    moved, _ = transition(step).run(road, first_state(road, step))
    return [abs(value) for value in moved]


def roughness(elevations: Sequence[float], step: float) -> float:
    """Roughness index of the whole profile, a slope."""
    moved = motion(elevations, step)
    return sum(moved) / len(moved)


def accumulated_travel(elevations: Sequence[float], step: float) -> float:
    """How far the suspension travels over the profile in all, metres."""
    return sum(motion(elevations, step)) * step


def running(moved: Sequence[float], step: float, base: float = BASE) -> list[float]:
    """The index over every stretch of ``base`` metres, from the ``motion`` of a profile."""
    points = max(1, round(base / step))
    sums = [0.0, *accumulate(moved)]
    return [(sums[i + points] - sums[i]) / points for i in range(len(moved) - points + 1)]
