"""A skid number without the tyre it is measured with.

Looks at
    Skid numbers, their names, and the tyre of the test.

Why it matters
    A ribbed tyre lets the water escape through its own ribs, a smooth one needs the texture for
    it. On one surface the two numbers may lie ten or more apart.

Conflict
    areas.mainline.friction: {measure: SN, at_least: at least 40, speed: 40 mph}

Settled
    areas.mainline.friction: {measure: SN, at_least: at least 40, speed: 40 mph, tyre: smooth}

How to settle it
    State the tyre: ribbed or smooth.

Sources
    Transportation Research Record 1348: the two tyres tell different things; the smooth one more
    ASTM E524-08, scope: the smooth tyre has a standard of its own
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.friction._measure import frictions
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="the tyre of the skid number is not stated",
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
    """One finding for each skid number of unknown tyre."""
    for area, friction, measure in frictions(job):
        if measure.kind != "skid number" or measure.tyre or friction.tyre:
            continue
        says = f"{friction.measure} means two things, one with a ribbed and one with a smooth tyre."
        at = [evidence(friction, "measure", "friction measure")]
        yield RULE.finding(area, says, at, ("tyre: smooth", "tyre: ribbed"))
