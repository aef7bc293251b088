"""A localized limit over a base as long as the segment.

Looks at
    The base of localized roughness against the length of the segment.

Why it matters
    Localized roughness finds the one bad place in a segment that passes. Over a base as long as
    the segment there is nothing left to find, and one surface has two limits.

Conflict
    areas.mainline.smoothness: {index: MRI, segment: 0.1 mi}
    areas.mainline.smoothness.localized: {limit: at most 160 in/mi, base: 528 ft}

Settled
    areas.mainline.smoothness: {index: MRI, segment: 0.1 mi}
    areas.mainline.smoothness.localized: {limit: at most 160 in/mi, base: 25 ft}

How to settle it
    Use the base of 25 ft, or take the localized limit out.

Sources
    Oregon DOT U00745-IRI, 2015: the localized limit is taken over 25.0 ft
    arithmetic: 0.1 mi = 528 ft
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.places import rides
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="the localized base is as long as the segment",
    grade=Grade.CONFLICT,
    basis="arithmetic",
    needs=("smoothness.segment", "smoothness.localized.base"),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each area whose base is no shorter than its segment."""
    for area, ride in rides(job):
        local, segment = given(ride.localized), given(ride.segment)
        base = given(local.base)
        if base.amounts[0].base < segment.amounts[0].base:
            continue
        says = f"Roughness is judged over {base}, and the segment is {segment}."
        at = [evidence(local, "base", "localized base"), evidence(ride, "segment", "segment")]
        yield RULE.finding(area, says, at, ("a base of 25 ft", "take the localized limit out"))
