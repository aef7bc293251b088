"""Runway grooves at an unusual distance from lights.

Looks at
    The strip left at in-pavement lights and other fixtures, against 3 to 18 in.

Why it matters
    Nearer than a few inches a blade touches the housing or its cable; a strip wider than 18 in
    is surface that no groove drains.

Conflict
    areas.runway.coverage.fixture_offset: 2 in

Settled
    areas.runway.coverage.fixture_offset: 6 in to 18 in

How to settle it
    Leave 6 in to 18 in.

Sources
    UFC 3-260-02, ch. 21, 2001: 6 in, with 3 in to either side, from in-pavement lights
    AC 150/5320-12C, 1997 (memory, unverified): 6 in to 18 in from lights
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.places import outside
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="the strip at lights is outside the published distances",
    grade=Grade.CAUTION,
    basis="published",
    needs=("coverage.fixture_offset",),
    applies_to=("runway_grooving",),
    base="runway_grooving",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each runway whose strip at lights lies outside the distances."""
    for area in job.areas.values():
        coverage = given(area.coverage)
        strip = given(coverage.fixture_offset)
        if not outside(strip, "3 in", "18 in"):
            continue
        says = f"The strip at lights and fixtures is {strip}; from 3 to 18 in is published."
        at = [evidence(coverage, "fixture_offset", "strip at fixtures")]
        yield RULE.finding(area, says, at, ("a strip of 6 in to 18 in",))
