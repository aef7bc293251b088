"""Roughness of a road that repeats itself, solved for the state that repeats with it."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from itertools import pairwise

from specwriter.trade.ride.matrix import add, exponential, identity, scale, solve
from specwriter.trade.ride.quarter_car import AT_REST, DYNAMICS, SPEED, transition

SAMPLE = 0.025
"""Largest sample interval of a computed road, metres."""


def roughness_of_period(
    elevation: Callable[[float], float], length: float, *, turned: bool = False
) -> float:
    """Roughness of an endless road whose averaged ``elevation`` repeats every ``length`` metres.

    ``elevation`` is already averaged over 250 mm, and continuous over one period. With
    ``turned`` every other period is upside down, so that a road of two periods repeats itself.
    The car's state after a period is linear in the state before it; the one state that comes
    out as it went in (or upside down) makes one period stand for the endless road.
    """
    road, step = _slopes(elevation, length)
    car = transition(step)
    _, forced = car.run(road, AT_REST)
    over_period = exponential(scale(DYNAMICS, length / SPEED))
    sign = 1.0 if turned else -1.0
    start = solve(add(identity(4), over_period, sign), [-sign * value for value in forced])
    moved, _ = car.run(road, start)
    return sum(abs(value) for value in moved) / len(moved)


def _slopes(elevation: Callable[[float], float], length: float) -> tuple[Sequence[float], float]:
    """Slopes over equal steps that fill the period, none longer than ``SAMPLE``."""
    count = max(1, -int(-length // SAMPLE))
    step = length / count
    heights = [elevation(index * step) for index in range(count + 1)]
    return [(after - before) / step for before, after in pairwise(heights)], step
