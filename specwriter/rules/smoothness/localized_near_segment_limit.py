"""A limit on localized roughness so near the segment limit that passing segments fail it.

Looks at
    The limit on localized roughness over 25 ft and the limit of the segment.

Why it matters
    Roughness scatters. In a segment that just passes, the worst 25 ft is about 1.65 times as
    rough as the whole. A localized limit below that sends half of them to corrective work.

Conflict
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.limit: at most 95 in/mi
    areas.mainline.smoothness.localized: {limit: at most 140 in/mi, base: 25 ft}

Settled
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.limit: at most 75 in/mi
    areas.mainline.smoothness.localized: {limit: at most 140 in/mi, base: 25 ft}

How to settle it
    Raise the localized limit to 1.65 times the segment limit, or expect and price the correction.

Sources
    project calculation: the worst 25 ft of a random 0.1 mi is about 1.65 times its roughness
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.quantity import parse, show
from specwriter.rules.places import ROUGHNESS_INDEXES, rides
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="segments that just pass will fail the localized limit",
    grade=Grade.CAUTION,
    basis="practice",
    needs=(
        "smoothness.index",
        "smoothness.limit",
        "smoothness.localized.limit",
        "smoothness.localized.base",
    ),
    quiet_after=(
        "index-instrument",
        "index-unit",
        "localized-below-segment-limit",
        "runway-roughness-index",
    ),
)

_WORST = Fraction("1.65")
_BASE = parse("24.5 ft to 25.5 ft").interval


def check(job: Job) -> Iterator[Finding]:
    """One finding for each localized limit below 1.65 times the segment limit."""
    for area, ride in rides(job):
        local, limit = given(ride.localized), given(ride.limit)
        short, base = given(local.limit), given(local.base)
        high, top = limit.interval.high, short.interval.high
        if ride.index not in ROUGHNESS_INDEXES or high is None or top is None:
            continue
        if base.interval.meet(_BASE).is_empty or not high < top < _WORST * high:
            continue
        says = (
            f"A segment at {show(high, limit.unit, 1)} has a worst 25 ft of about "
            f"{show(_WORST * high, limit.unit, 0)}, above {show(top, short.unit, 1)}; about "
            "half of the segments that just pass need correction."
        )
        at = [
            evidence(local, "limit", "localized limit"),
            evidence(ride, "limit", "smoothness limit"),
        ]
        settle = (
            f"a localized limit of {show(_WORST * high, limit.unit, 0)} or more",
            "a lower limit of the segment",
        )
        yield RULE.finding(area, says, at, settle)
