"""A rule for partial segments that swallows full ones.

Looks at
    The length of a segment and the length below which a remainder is joined to the one before.

Why it matters
    If remainders up to a full segment or more are joined, no segment is left to be judged for
    itself, or two readers cut the lane into different segments.

Conflict
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.segment: 0.1 mi
    areas.mainline.smoothness.partial_segment: 600 ft

Settled
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.segment: 0.1 mi
    areas.mainline.smoothness.partial_segment: 250 ft

How to settle it
    Join only remainders shorter than a segment; agencies use 50, 100 or 250 ft.

Sources
    arithmetic: a remainder is shorter than a segment
    Iowa DOT Standard Specifications, section 2317, April 2019: up to 250 ft is joined
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.places import rides
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="the rule for partial segments covers full ones",
    grade=Grade.CONFLICT,
    basis="arithmetic",
    needs=("smoothness.segment", "smoothness.partial_segment"),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each partial segment that is not shorter than a full one."""
    for area, ride in rides(job):
        segment, partial = given(ride.segment), given(ride.partial_segment)
        full, part = segment.reading.high, partial.reading.low
        if full is None or part is None or part <= full:
            continue
        says = f"Remainders up to {partial} are joined, and a full segment is {segment} long."
        at = [
            evidence(ride, "partial_segment", "partial segment"),
            evidence(ride, "segment", "segment"),
        ]
        settle = (f"a partial segment shorter than {segment}", "a longer segment")
        yield RULE.finding(area, says, at, settle)
