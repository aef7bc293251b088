"""A localized limit so near to the segment limit that segments which pass need correction.

Looks at
    The limit on localized roughness over 25 ft, against the limit of the segment.

Why it matters
    Within a segment roughness goes up and down. Where the localized limit is less than one and a
    half times that of the segment, most segments that just pass hold a place that must be ground.

Conflict
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.limit: at most 75 in/mi
    areas.mainline.smoothness.localized: {limit: at most 100 in/mi, base: 25 ft}

Settled
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.limit: at most 75 in/mi
    areas.mainline.smoothness.localized: {limit: at most 125 in/mi, base: 25 ft}

How to settle it
    Raise the localized limit, or lower that of the segment.

Sources
    published pairs of limits, 140 beside 95 and 125 beside 80 in/mi, undated: ratios 1.47 and 1.56
    project calculation: on random roughness the worst 25 ft is about 1.65 times the segment
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.quantity import parse
from specwriter.rules.places import ROUGHNESS_INDEXES, rides
from specwriter.rules.rule import Rule, evidence, given

_LEAST = Fraction("1.47")
_BASES = parse("20 ft to 30 ft").interval

RULE = Rule(
    title="the localized limit is near that of the segment",
    grade=Grade.CAUTION,
    basis="published",
    needs=("smoothness.limit", "smoothness.localized.limit", "smoothness.localized.base"),
    quiet_after=("index-instrument", "index-unit", "localized-below-segment-limit", "unit-slip"),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each localized limit below the lowest published ratio."""
    for area, ride in rides(job):
        local, limit = given(ride.localized), given(ride.limit)
        short, base = given(local.limit), given(local.base)
        low, high = short.reading.high, limit.interval.high
        near_25_ft = not base.interval.meet(_BASES).is_empty
        if ride.index not in ROUGHNESS_INDEXES or not near_25_ft or not low or not high:
            continue
        if low >= _LEAST * high:
            continue
        says = (
            f"A segment may reach {limit} and {base} of it {short}: {float(low / high):.2f} times "
            "as much. On random roughness the worst 25 ft is about 1.65 times the segment."
        )
        at = [
            evidence(local, "limit", "localized limit"),
            evidence(ride, "limit", "smoothness limit"),
        ]
        yield RULE.finding(area, says, at, ("a higher localized limit", "a lower segment limit"))
