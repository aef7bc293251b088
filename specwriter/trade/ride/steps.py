"""Roughness that steps at joints make, and what a limit leaves for them.

A step is smoothed by the moving average into a ramp of 250 mm. All results are linear in the
height of the step: they are given for a step of one metre, so a slope per metre of step
(multiply by ``FOOT * 5280`` for in/mi per inch).

Source: project calculation with the quarter-car of ASTM E1926, except where said otherwise.
"""

from __future__ import annotations

from functools import lru_cache
from math import pow

from specwriter.trade.ride import INCH_PER_MILE
from specwriter.trade.ride.periodic import SAMPLE, roughness_of_period
from specwriter.trade.ride.quarter_car import AT_REST, transition
from specwriter.trade.ride.roughness import AVERAGING, BASE, running

EXPONENT = 1.75
"""Exponent by which steps and background combine. Source: project calculation, fitted to sixteen
cases at 15 ft joints; 192 further cases (joints 12 to 20 ft apart, background 30 to 80 in/mi,
steps 1/32 to 1/4 in, three spectra) have an rms error of 1.6 percent."""

COMBINATION_ERROR = 0.045
"""Largest relative error of the rule in those cases. Source: project calculation."""

SMOOTHEST = 30 * INCH_PER_MILE
"""Roughness between the joints of the smoothest surface to be expected. Common practice, no
source."""

JOINTS = (3.0, 12.2)
"""Spacing of joints (metres, 10 ft to 40 ft) over which roughness falls steadily with it. Project
calculation."""

SHORTEST = 1.0
"""Joints closer than this (metres) are outside what the rules here were held against."""

_FADED = 70.0
"""Metres after which the car has forgotten a step: eight times its slower decay length."""

_REMEMBERED = 9
"""Joints whose steps the car still feels, for random signs; shared out exactly."""


def _ramp(position: float) -> float:
    """A step of one metre as the moving average shows it."""
    return min(max(position / AVERAGING, 0.0), 1.0)


@lru_cache(maxsize=1024)
def saw_tooth(spacing: float) -> float:
    """Roughness per metre of step, all steps one way and every slab tilted back to level.

    Faulted slabs look like this. ``spacing`` of the joints in metres.
    """
    _check(spacing)
    return roughness_of_period(lambda x: _ramp(x) - x / spacing, spacing)


@lru_cache(maxsize=1024)
def alternating(spacing: float) -> float:
    """Roughness per metre of step, up at one joint and down at the next, slabs level."""
    _check(spacing)
    return roughness_of_period(_ramp, spacing, turned=True)


@lru_cache(maxsize=1024)
def random_sign(spacing: float) -> float:
    """Mean roughness per metre of step, up or down by chance at each joint, slabs level.

    The mean over all signs of the last nine joints: good for joints 3 m apart or more.
    """
    _check(spacing)
    after_step, step = response()
    stride = round(spacing / step)
    total = 0.0
    for at in range(stride):
        sums = [after_step[at]]
        for felt in after_step[at + stride : at + _REMEMBERED * stride : stride]:
            sums = [value + sign * felt for value in sums for sign in (1.0, -1.0)]
        total += sum(abs(value) for value in sums) / len(sums)
    return total / stride


@lru_cache(maxsize=1)
def response() -> tuple[tuple[float, ...], float]:
    """The suspension's motion after a single step of one metre, and the sample interval."""
    road = [1 / AVERAGING] * round(AVERAGING / SAMPLE)
    road += [0.0] * round(_FADED / SAMPLE)
    moved, _ = transition(SAMPLE).run(road, AT_REST)
    return tuple(moved), SAMPLE


@lru_cache(maxsize=1)
def travel_of_step() -> float:
    """Suspension travel that a single step adds, per height of the step (about 3.44)."""
    moved, step = response()
    return sum(abs(value) for value in moved) * step


def isolated(length: float) -> float:
    """Roughness that a single step adds to a stretch of ``length`` metres, per metre of step.

    With ``length`` the spacing of the joints this is the most that any pattern of equal steps
    can make, since motions that overlap never add up to more than their sum.
    """
    return travel_of_step() / length


@lru_cache(maxsize=64)
def localized(base: float = BASE) -> float:
    """Highest roughness over a short base that a single step makes, per metre of step."""
    moved, step = response()
    before = [0.0] * round(base / step)
    return max(running([*before, *map(abs, moved)], step, base))


def combined(background: float, steps: float) -> float:
    """Roughness of a surface that has both: ``(b^1.75 + f^1.75)^(1/1.75)``.

    Both in one unit. Source: ``EXPONENT``.
    """
    larger = max(background, steps)
    if larger == 0:
        return 0.0
    smaller = min(background, steps) / larger
    return larger * pow(1 + pow(smaller, EXPONENT), 1 / EXPONENT)


def room_for(limit: float, part: float) -> float:
    """What one part may reach when the other is ``part`` and both must stay within ``limit``.

    The inverse of ``combined``; 0 where the other part uses up the limit alone.
    """
    if part >= limit:
        return 0.0
    return limit * pow(1 - pow(part / limit, EXPONENT), 1 / EXPONENT)


def affordable_step(limit: float, background: float, spacing: float) -> float:
    """Height of step at every joint (metres) that ``limit`` leaves beside ``background``.

    ``limit`` and ``background`` as slopes, ``spacing`` in metres; saw-tooth slabs.
    """
    return room_for(limit, background) / saw_tooth(spacing)


def _check(spacing: float) -> None:
    if not spacing >= SHORTEST:
        raise ValueError(f"joints {spacing} m apart are outside the range of the calculation")
