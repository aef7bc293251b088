"""Runway grooves close to an arresting cable.

Looks at
    The strip left on each side of an arresting cable, against 10 ft.

Why it matters
    The hook strikes short of the cable and drags it over the surface. Grooves there wear the cable
    and chip under the hook.

Conflict
    areas.runway.coverage.cable_offset: 3 ft

Settled
    areas.runway.coverage.cable_offset: at least 10 ft

How to settle it
    Leave at least 10 ft on each side of the cable.

Sources
    UFC 3-260-02, ch. 21, 2001: no grooves in the first 10 ft (3 m) on each side of the hook cable
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="the grooves come close to the arresting cable",
    grade=Grade.CAUTION,
    basis="published",
    needs=("coverage.cable_offset",),
    applies_to=("runway_grooving",),
    base="runway_grooving",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each runway whose strip beside the cable is less than 10 ft."""
    for area in job.areas.values():
        coverage = given(area.coverage)
        strip = given(coverage.cable_offset)
        ends = (strip.interval.low, strip.interval.high)
        # The metric column of the source is 3 m, which is a little less than 10 ft.
        if max(end for end in ends if end is not None) >= 3:
            continue
        says = f"The strip beside the arresting cable is {strip}; 10 ft is published."
        at = [evidence(coverage, "cable_offset", "strip beside the cable")]
        yield RULE.finding(area, says, at, ("a strip of at least 10 ft",))
