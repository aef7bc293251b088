"""Runway grooves beside the arresting cable without a distance.

Looks at
    Whether the strip left at the arresting cable is given where the site has any.

Why it matters
    The cable is lifted by blocks and dragged across the surface. The edges of
    grooves wear it where it has to hold.

Conflict
    conditions.arresting_gear: true

Settled
    conditions.arresting_gear: true
    areas.runway.coverage.cable_offset: at least 10 ft

How to settle it
    Give the strip that is left without grooves, such as at least 10 ft.

Sources
    UFC 3-260-02, ch. 21, 2001: none in the first 10 ft on each side of the hook cable
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="no distance from the arresting cable is given for the grooves",
    grade=Grade.OPEN,
    basis="published",
    needs=("conditions.arresting_gear",),
    applies_to=("runway_grooving",),
    base="runway_grooving",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each runway grooved at no stated distance from the arresting cable."""
    if not job.conditions.arresting_gear:
        return
    for area in job.areas.values():
        if area.coverage is not None and area.coverage.cable_offset is not None:
            continue
        says = "The site has arresting gear, and nothing says how far from there the grooves stop."
        at = [
            evidence(area, "texture", "texture"),
            evidence(job.conditions, "arresting_gear", "arresting gear"),
        ]
        yield RULE.finding(area, says, at, ("give the strip, such as at least 10 ft",))
