"""Wide grooves along the lane where two-wheelers ride.

Looks at
    The groove width of longitudinal grooves, where motorcycles, mopeds or bicycles use the
    surface.

Why it matters
    A narrow tyre tends to follow a wide groove. Riders feel the tracking, and those who do not
    expect it steer against it.

Conflict
    conditions.two_wheelers: true
    areas.mainline.groove.width: 3/16 in

Settled
    conditions.two_wheelers: true
    areas.mainline.groove.width: 0.095 in

How to settle it
    Narrow the groove to 1/8 in or less, and sign the grooved surface.

Sources
    California motorcycle study, 1969, as re-reported 2007: no hazard in six patterns to 1/8 in
    Los Angeles pavement grooving report, 1972: wider grooves were felt as tracking
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule, evidence, given

_TRIED = Fraction(1, 8) * Fraction("0.0254")
"""1/8 in, the widest groove of the California motorcycle study, 1969, as re-reported 2007."""

RULE = Rule(
    title="longitudinal grooves are wide for two-wheelers",
    grade=Grade.CAUTION,
    basis="published",
    needs=("conditions.two_wheelers", "groove.width"),
    applies_to=("longitudinal_grooving", "next_generation_concrete_surface"),
    base="longitudinal_grooving",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each longitudinal groove wider than those that riders have tried."""
    if not job.conditions.two_wheelers:
        return
    for area in job.areas.values():
        groove = given(area.groove)
        width = given(groove.width)
        low = width.reading.low
        if low is None or low <= _TRIED:
            continue
        says = (
            f"The grooves run along the lane and are {width} wide; riders have found grooves up "
            "to 1/8 in no hazard, and felt wider ones."
        )
        at = [
            evidence(groove, "width", "groove width"),
            evidence(job.conditions, "two_wheelers", "two-wheelers"),
        ]
        yield RULE.finding(area, says, at, ("a groove width of 1/8 in or less",))
