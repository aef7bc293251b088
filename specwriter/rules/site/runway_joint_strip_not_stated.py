"""Runway grooves across concrete joints without a distance from them.

Looks at
    Runways of airfield concrete, and the strip along the joints.

Why it matters
    A saw that cuts through a joint tears its sealant and spalls its edge, and the pieces lie where
    engines breathe.

Conflict
    conditions.pavement: airfield_concrete

Settled
    conditions.pavement: airfield_concrete
    areas.runway.coverage.joint_offset: 3 in to 9 in

How to settle it
    Give the distance from transverse joints at which the grooves stop.

Sources
    UFC 3-260-02, ch. 21, 2001: no groove within 6 in of transverse joints, working cracks and seals
    AC 150/5320-12C, 1997 (memory, unverified): 3 to 9 in from transverse joints
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="no distance from the joints is given for the grooves",
    grade=Grade.OPEN,
    basis="published",
    needs=("conditions.pavement",),
    applies_to=("runway_grooving",),
    base="runway_grooving",
    by_site=True,
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each concrete runway grooved at no stated distance from its joints."""
    if job.conditions.pavement != "airfield_concrete":
        return
    for area in job.areas.values():
        if area.coverage is not None and area.coverage.joint_offset is not None:
            continue
        says = "The runway is of concrete, and nothing says how far from its joints grooves stop."
        at = [
            evidence(area, "texture", "texture"),
            evidence(job.conditions, "pavement", "pavement"),
        ]
        yield RULE.finding(area, says, at, ("give the strip along the joints",))
