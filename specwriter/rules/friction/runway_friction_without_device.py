"""A runway friction coefficient without the class of its device.

Looks at
    Friction coefficients on a runway or taxiway, and the device of the test.

Why it matters
    Each class of continuous friction equipment has levels of its own. The same runway shows
    0.74 with one class at 60 mph and 0.66 with another, and both are as good as new.

Conflict
    areas.runway.friction: {measure: Mu, at_least: at least 0.82, speed: 40 mph}

Settled
    areas.runway.friction:
      measure: Mu
      at_least: at least 0.82
      speed: 40 mph
      test: {device: continuous friction measuring equipment of the fixed-slip class}

How to settle it
    Name the class of the device, by what it does, and take the level of that class.

Sources
    FAA AC 150/5320-12C, table 3-2, 1997, as reproduced: levels by class; fixed slip 0.82 and 0.74
    FAA AC 150/5320-12C, table 3-2, other rows: memory, unverified
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.friction._measure import frictions
from specwriter.rules.places import AIRFIELD
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="the class of the friction device is not stated",
    grade=Grade.OPEN,
    basis="published",
    needs=("friction.measure",),
    base="runway_grooving",
    quiet_after=("friction-scale", "requirement-without-test"),
)


_DEVICE = re.compile(r"ASTM|slip|side.force|trailer|device|equipment|tester|vehicle", re.IGNORECASE)
"""Words of a method that say what measures; a circular that lists all classes does not."""


def check(job: Job) -> Iterator[Finding]:
    """One finding for each airfield coefficient without a device."""
    for area, friction, measure in frictions(job):
        test = friction.test
        known = test is not None and (test.device or _DEVICE.search(test.method or ""))
        if area.place not in AIRFIELD or measure.kind != "coefficient" or known:
            continue
        says = f"{friction.measure} has a level for each class of device, and no class is named."
        at = [evidence(friction, "measure", "friction measure"), evidence(area, "place", "place")]
        settle = ("test: device: the class, such as fixed slip or side force",)
        yield RULE.finding(area, says, at, settle)
