"""Runway grooves that stop too near the edge or too far from it.

Looks at
    The strip along the runway edge that is left without grooves, against 5 to 10 ft.

Why it matters
    Nearer than 5 ft the saw runs out of pavement to stand on. Farther than 10 ft an aircraft that
    leaves the middle has a wide strip without grooves under its wheels.

Conflict
    areas.runway.coverage.edge_offset: at least 15 ft

Settled
    areas.runway.coverage.edge_offset: 5 ft to 10 ft

How to settle it
    End the grooves 5 to 10 ft from the edge.

Sources
    UFC 3-260-02, ch. 21, 2001: grooves end within 5 to 10 ft (1.5 to 3 m) of the edge
    AC 150/5320-12C, 1997 (memory, unverified): at most 10 ft from the edge
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.places import outside
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="the strip along the runway edge is outside 5 to 10 ft",
    grade=Grade.CAUTION,
    basis="published",
    needs=("coverage.edge_offset",),
    applies_to=("runway_grooving",),
    base="runway_grooving",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each runway whose grooves end outside 5 to 10 ft from the edge."""
    for area in job.areas.values():
        coverage = given(area.coverage)
        strip = given(coverage.edge_offset)
        if not outside(strip, "5 ft", "10 ft"):
            continue
        says = f"The strip along the edge is {strip}; the grooves should end 5 to 10 ft from it."
        at = [evidence(coverage, "edge_offset", "strip along the edge")]
        yield RULE.finding(area, says, at, ("a strip of 5 ft to 10 ft",))
