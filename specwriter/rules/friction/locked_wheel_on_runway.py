"""A highway skid number on a runway or taxiway.

Looks at
    The friction measure of areas on a runway or taxiway.

Why it matters
    Runway friction is kept by continuous measurement with a slipping wheel, against levels for
    each class of device. A skid number of a locked wheel has no level there.

Conflict
    areas.runway.friction: {measure: SN, at_least: at least 40, speed: 40 mph, tyre: smooth}

Settled
    areas.runway.friction:
      measure: Mu
      at_least: at least 0.82
      speed: 40 mph
      test: {device: continuous friction measuring equipment of the fixed-slip class}

How to settle it
    Ask for the coefficient of continuous friction measuring equipment, with class and speed.

Sources
    FAA AC 150/5320-12C, table 3-2, 1997, as reproduced by a state office: device classes
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.friction._measure import frictions
from specwriter.rules.places import AIRFIELD
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="a highway skid number on an airfield",
    grade=Grade.CONFLICT,
    basis="published",
    needs=("friction.measure",),
    base="runway_grooving",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each airfield surface that is to show a skid number."""
    for area, friction, measure in frictions(job):
        if area.place not in AIRFIELD or measure.kind != "skid number":
            continue
        says = (
            f"{friction.measure} is measured with a locked wheel; a {area.place} is judged by "
            "continuous friction measuring equipment, at 40 and 60 mph."
        )
        at = [evidence(friction, "measure", "friction measure"), evidence(area, "place", "place")]
        settle = ("a coefficient (Mu) with the class of the device and the speed",)
        yield RULE.finding(area, says, at, settle)
