"""A runway friction limit below the level for new surfaces.

Looks at
    Friction coefficients on a runway or taxiway for devices of the fixed-slip class.

Why it matters
    A new surface accepted at the maintenance level has no life before it: the first wear brings
    it to where work must be planned again.

Conflict
    areas.runway.friction:
      measure: Mu
      at_least: at least 0.60
      speed: 40 mph
      test: {device: continuous friction measuring equipment of the fixed-slip class}

Settled
    areas.runway.friction:
      measure: Mu
      at_least: at least 0.82
      speed: 40 mph
      test: {device: continuous friction measuring equipment of the fixed-slip class}

How to settle it
    Ask for the level of new surfaces: 0.82 at 40 mph, 0.74 at 60 mph with fixed slip.

Sources
    FAA AC 150/5320-12C, table 3-2, 1997, as reproduced in two places: new level 0.82 and 0.74
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.quantity import parse
from specwriter.rules.friction._measure import frictions
from specwriter.rules.places import AIRFIELD
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="the runway friction is below that of a new surface",
    grade=Grade.CAUTION,
    basis="published",
    needs=("friction.measure", "friction.at_least", "friction.speed", "friction.test.device"),
    base="runway_grooving",
    quiet_after=("friction-scale", "runway-friction-speed"),
)

_LEVELS = (
    (parse("64 km/h to 66 km/h").interval, Fraction("0.82")),
    (parse("94 km/h to 97 km/h").interval, Fraction("0.74")),
)
"""Speed, and the level of a new surface for the fixed-slip class."""


def check(job: Job) -> Iterator[Finding]:
    """One finding for each fixed-slip limit below the level of a new surface."""
    for area, friction, measure in frictions(job):
        device = (given(given(friction.test).device)).lower().replace("-", " ")
        fits = area.place in AIRFIELD and measure.kind == "coefficient" and "fixed slip" in device
        speed, limit = given(friction.speed), given(friction.at_least)
        for at_speed, level in _LEVELS:
            if not fits or speed.interval.meet(at_speed).is_empty:
                continue
            if limit.amounts[0].value < level:
                says = (
                    f"{limit} is asked for; a new surface shows {float(level):.2f} at {speed} with "
                    "a device of the fixed-slip class."
                )
                at = [
                    evidence(friction, "at_least", "friction limit"),
                    evidence(friction, "speed", "test speed"),
                ]
                yield RULE.finding(area, says, at, (f"at least {float(level):.2f}",))
