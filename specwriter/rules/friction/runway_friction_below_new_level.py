"""A runway friction limit below the level for new surfaces.

Looks at
    Friction coefficients on a runway or taxiway, for devices of the fixed-slip class against the
    level of that class, for others against the lowest of all classes.

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
    FAA AC 150/5320-12C, table 3-2, other rows (memory, unverified): from 0.69 and 0.63 upwards
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
    (parse("64 km/h to 66 km/h").interval, Fraction("0.82"), Fraction("0.69")),
    (parse("94 km/h to 97 km/h").interval, Fraction("0.74"), Fraction("0.63")),
)
"""Speed, and the level of a new surface: of the fixed-slip class, and the lowest of all classes.

FAA AC 150/5320-12C, table 3-2, 1997; the lowest is memory, unverified.
"""


def check(job: Job) -> Iterator[Finding]:
    """One finding for each fixed-slip limit below the level of a new surface."""
    for area, friction, measure in frictions(job):
        device = (given(given(friction.test).device)).lower().replace("-", " ")
        fits = area.place in AIRFIELD and measure.kind == "coefficient"
        speed, limit = given(friction.speed), given(friction.at_least)
        for at_speed, fixed, lowest in _LEVELS:
            if not fits or speed.interval.meet(at_speed).is_empty:
                continue
            level = fixed if "fixed slip" in device else lowest
            if limit.amounts[0].value < level:
                with_what = (
                    "a device of the fixed-slip class"
                    if level == fixed
                    else "the class that reads lowest (memory, unverified)"
                )
                says = (
                    f"{limit} is asked for; a new surface shows {float(level):.2f} at {speed} with "
                    f"{with_what}."
                )
                at = [
                    evidence(friction, "at_least", "friction limit"),
                    evidence(friction, "speed", "test speed"),
                ]
                yield RULE.finding(area, says, at, (f"at least {float(level):.2f}",))
