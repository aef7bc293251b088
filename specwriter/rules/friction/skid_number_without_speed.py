"""A skid number without the speed it is measured at.

Looks at
    Skid numbers, their names, and the speed of the test.

Why it matters
    Friction falls with speed. The surface of one textbook example shows 48 at 20 mph and 34 at
    60 mph: without the speed the limit has no meaning.

Conflict
    areas.mainline.friction: {measure: SN, at_least: at least 40, tyre: smooth}

Settled
    areas.mainline.friction: {measure: SN, at_least: at least 40, tyre: smooth, speed: 40 mph}

How to settle it
    State the speed of the test; 40 mph is customary.

Sources
    university pavement textbook, 2nd edition, problem 9.4, undated: 47.7, 40, 33.6 at 20, 40, 60
    ASTM E274-97; 40 mph as the customary speed from memory, unverified
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.friction._measure import frictions
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="the speed of the skid number is not stated",
    grade=Grade.OPEN,
    basis="published",
    needs=("friction.measure",),
    quiet_after=(
        "friction-measure-and-method",
        "friction-scale",
        "locked-wheel-on-runway",
        "method-of-another-property",
    ),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each skid number of unknown speed."""
    for area, friction, measure in frictions(job):
        if measure.kind != "skid number" or measure.speed or friction.speed:
            continue
        says = (
            f"{friction.measure} falls with speed, from about 48 at 20 mph to 34 at 60 mph for one "
            "surface; the job does not say at which speed it is measured."
        )
        at = [evidence(friction, "measure", "friction measure")]
        yield RULE.finding(area, says, at, ("speed: 40 mph, which is customary",))
