"""Runway grooves beside the lights without a distance.

Looks at
    Whether the strip left at the lights is given where the site has any.

Why it matters
    A blade that reaches a light destroys it, and the kerf of its cable is shallow. A whole circuit
    is then dark until the next closure.

Conflict
    conditions.in_pavement_lights: true

Settled
    conditions.in_pavement_lights: true
    areas.runway.coverage.fixture_offset: 6 in to 18 in

How to settle it
    Give the strip that is left without grooves, such as 6 in to 18 in.

Sources
    UFC 3-260-02, ch. 21, 2001: no groove within 6 in of in-pavement lights
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="no distance from the lights is given for the grooves",
    grade=Grade.OPEN,
    basis="published",
    needs=("conditions.in_pavement_lights",),
    applies_to=("runway_grooving",),
    base="runway_grooving",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each runway grooved at no stated distance from the lights."""
    if not job.conditions.in_pavement_lights:
        return
    for area in job.areas.values():
        if area.coverage is not None and area.coverage.fixture_offset is not None:
            continue
        says = (
            "The site has in-pavement lights, and nothing says how far from there the grooves stop."
        )
        at = [
            evidence(area, "texture", "texture"),
            evidence(job.conditions, "in_pavement_lights", "in-pavement lights"),
        ]
        yield RULE.finding(area, says, at, ("give the strip, such as 6 in to 18 in",))
