"""Runway grooves at an unusual distance from the joints.

Looks at
    The strip along transverse joints against the setting runway_joint_offset, or without it
    against 3 to 9 in, which covers the published distances.

Why it matters
    The documents disagree: 6 in for military airfields, a band of 3 to 9 in elsewhere. A distance
    outside both fails on either kind of airfield.

Conflict
    areas.runway.coverage.joint_offset: at most 1 in

Settled
    areas.runway.coverage.joint_offset: 3 in to 9 in

How to settle it
    Keep within 3 to 9 in, or within the setting of the house.

Sources
    UFC 3-260-02, ch. 21, 2001: 6 in from transverse joints and working cracks
    AC 150/5320-12C, 1997 (memory, unverified): 3 to 9 in from transverse joints
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.quantity import parse
from specwriter.rules.rule import Rule, evidence, given

PUBLISHED = parse("3 in to 9 in").interval
"""UFC 3-260-02, ch. 21, 2001 (6 in) lies in the band of AC 150/5320-12C, 1997 (memory)."""

RULE = Rule(
    title="the strip along the joints is outside the published distances",
    grade=Grade.CAUTION,
    basis="published",
    needs=("coverage.joint_offset",),
    applies_to=("runway_grooving",),
    base="runway_grooving",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each runway whose strip along joints lies outside the distances."""
    settings = job.settings
    setting = settings and settings.runway_joint_offset
    for area in job.areas.values():
        coverage = given(area.coverage)
        strip = given(coverage.joint_offset)
        meets = strip.reading.meet(setting.interval if setting else PUBLISHED)
        if not meets.is_empty:
            continue
        against = (
            f"the setting runway_joint_offset is {setting}"
            if setting
            else "3 in to 9 in is published"
        )
        says = f"The strip along the joints is {strip}; {against}."
        at = [evidence(coverage, "joint_offset", "strip along joints")]
        if settings and setting:
            at.append(evidence(settings, "runway_joint_offset", "setting runway_joint_offset"))
        yield RULE.finding(area, says, at, (f"a strip of {setting or '3 in to 9 in'}",))
