"""A runway friction limit at a speed for which no level is set.

Looks at
    Friction coefficients on a runway or taxiway, and the speed of the test.

Why it matters
    The levels hold for 40 mph, which shows the microtexture, and for 60 mph, which shows the
    texture that drains. At another speed there is nothing to hold the result against.

Conflict
    areas.runway.friction:
      measure: Mu
      at_least: at least 0.74
      speed: 50 mph
      test: {device: continuous friction measuring equipment of the fixed-slip class}

Settled
    areas.runway.friction:
      measure: Mu
      at_least: at least 0.74
      speed: 60 mph
      test: {device: continuous friction measuring equipment of the fixed-slip class}

How to settle it
    Test at 40 mph or 60 mph (65 or 95 km/h), with the level of that speed.

Sources
    FAA AC 150/5320-12C, table 3-2, 1997, as reproduced by a state aeronautics office: 40 and 60 mph
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.quantity import parse
from specwriter.rules.friction._measure import frictions
from specwriter.rules.places import AIRFIELD
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="no friction level is set for this speed",
    grade=Grade.CAUTION,
    basis="published",
    needs=("friction.measure", "friction.speed"),
    base="runway_grooving",
    quiet_after=("friction-scale",),
)

# 65 and 95 km/h are the rounded metric speeds in use beside 40 and 60 mph
_SPEEDS = tuple(parse(text).interval for text in ("64 km/h to 66 km/h", "94 km/h to 97 km/h"))


def check(job: Job) -> Iterator[Finding]:
    """One finding for each airfield coefficient at another speed."""
    for area, friction, measure in frictions(job):
        speed = given(friction.speed)
        if area.place not in AIRFIELD or measure.kind != "coefficient":
            continue
        if any(not speed.interval.meet(each).is_empty for each in _SPEEDS):
            continue
        says = f"Levels are set for 40 mph and 60 mph; {friction.measure} is tested at {speed}."
        at = [evidence(friction, "speed", "test speed"), evidence(area, "place", "place")]
        yield RULE.finding(area, says, at, ("test at 40 mph", "test at 60 mph"))
