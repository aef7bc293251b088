"""A localized limit stricter than the limit of the whole segment.

Looks at
    The limit on localized roughness and the limit of the segment.

Why it matters
    Over a short base roughness always varies more than over a segment. A localized limit
    below the segment limit sends segments that pass to corrective work almost everywhere.

Conflict
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.limit: at most 75 in/mi
    areas.mainline.smoothness.localized: {limit: at most 60 in/mi, base: 25 ft}

Settled
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.limit: at most 75 in/mi
    areas.mainline.smoothness.localized: {limit: at most 160 in/mi, base: 25 ft}

How to settle it
    Set the localized limit well above the limit of the segment.

Sources
    arithmetic: if no base exceeds the localized limit, no segment exceeds it, so the other is idle
    project calculation: on random roughness the worst 25 ft is about 1.65 times the segment
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.places import rides
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="the localized limit is stricter than the segment limit",
    grade=Grade.CONFLICT,
    basis="arithmetic",
    needs=("smoothness.limit", "smoothness.localized.limit"),
    quiet_after=("index-instrument", "index-unit"),
    slip=True,
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each area whose localized limit lies below that of the segment."""
    for area, ride in rides(job):
        local, limit = given(ride.localized), given(ride.limit)
        short = given(local.limit)
        low, high = short.reading.high, limit.interval.high
        if low is None or high is None or low >= high:
            continue
        says = (
            f"A segment may reach {limit}, but no short base in it may exceed {short}: "
            "the limit of the segment can never be used."
        )
        at = [
            evidence(local, "limit", "localized limit"),
            evidence(ride, "limit", "smoothness limit"),
        ]
        settle = (f"a localized limit above {limit.amounts[-1].text} {limit.unit.symbol}",)
        yield RULE.finding(area, says, at, settle)
