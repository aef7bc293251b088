"""An OBSI limit at another speed than 60 mph.

Looks at
    OBSI limits and the speed of the test.

Why it matters
    From 45 to 60 mph the level rises by 3 to 5 dB. Nearly all published levels are for 60 mph,
    so a limit at another speed cannot be set from them, nor held against them.

Conflict
    areas.mainline.noise: {measure: OBSI, at_most: 100 dB(A), speed: 45 mph}

Settled
    areas.mainline.noise: {measure: OBSI, at_most: 102 dB(A), speed: 60 mph}

How to settle it
    Test at 60 mph, or say from which measurements at this speed the limit was taken.

Sources
    AASHTO T 360-16(2020), scope: 60 mph (97 km/h) unless stated otherwise
    memory, unverified: the level rises with 25 to 40 times the logarithm of speed
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.quantity import parse
from specwriter.rules.noise._noise import NOT_COMPARABLE, noises
from specwriter.rules.rule import Rule, evidence, given
from specwriter.trade.sound import (
    SLOPE_RANGE,
    SPEEDS_MPH,
    STANDARD_SPEED_MPH,
    is_known_speed,
    level_change,
)

RULE = Rule(
    title="published levels are for another speed",
    grade=Grade.CAUTION,
    basis="published",
    needs=("noise.measure", "noise.speed"),
    quiet_after=NOT_COMPARABLE,
)

_STANDARD = parse("59 mph to 61 mph").interval
_MPH = 0.44704


def check(job: Job) -> Iterator[Finding]:
    """One finding for each OBSI limit at another speed."""
    for area, noise in noises(job):
        speed = given(noise.speed)
        if noise.measure != "OBSI" or not speed.interval.meet(_STANDARD).is_empty:
            continue
        stated = float(speed.amounts[0].base) / _MPH
        says = f"Published levels are for 60 mph; at {speed} {_difference(stated)}."
        at = [evidence(noise, "speed", "test speed"), evidence(noise, "measure", "measure")]
        settle = ("speed: 60 mph", "name the measurements at this speed behind the limit")
        yield RULE.finding(area, says, at, settle)


def _difference(mph: float) -> str:
    """How far the level of the same pavement is off, where that is known."""
    if not is_known_speed(mph):
        slow, fast = SPEEDS_MPH
        return f"nothing is known of the difference, which is carried from {slow} to {fast} mph"
    way = "quieter" if mph < STANDARD_SPEED_MPH else "louder"
    least, most = sorted(abs(level_change(mph, STANDARD_SPEED_MPH, each)) for each in SLOPE_RANGE)
    return (
        f"the same pavement is about {least:.0f} to {most:.0f} dB {way} (slope from memory, "
        "unverified)"
    )
