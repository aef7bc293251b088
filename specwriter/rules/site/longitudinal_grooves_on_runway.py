"""Grooves along a runway.

Looks at
    Longitudinal grooving on a runway.

Why it matters
    Water must leave a runway to the side, also under the tyres of aircraft that brake. Grooves
    along it do not lead the water to the edge, and the documents for runways have them across.

Conflict
    areas.mainline.place: runway

Settled
    areas.mainline.place: roadway

How to settle it
    Cut the grooves square to the centerline (texture runway_grooving).

Sources
    ICAO Annex 14 Vol. I, 3.1.24-25, as quoted (undated): grooves stand square to the centerline
    UFC 3-260-02, ch. 21, 2001: runway grooves are transverse
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="the grooves run along the runway",
    grade=Grade.CONFLICT,
    basis="published",
    applies_to=("longitudinal_grooving",),
    base="longitudinal_grooving",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each runway that is grooved along its length."""
    for area in job.areas.values():
        if area.place != "runway":
            continue
        says = "The grooves run along the runway, and must lead the water across it."
        at = [evidence(area, "texture", "texture"), evidence(area, "place", "place")]
        yield RULE.finding(area, says, at, ("texture: runway_grooving",))
