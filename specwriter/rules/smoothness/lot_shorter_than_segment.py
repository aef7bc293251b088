"""A lot of the ride test shorter than the segment that is judged.

Looks at
    The lengths that the lot of the smoothness test names, and the length of the segment.

Why it matters
    The index is one number for a segment. A lot of half a segment has no number of its own, and
    nobody can say which of the two lots fails.

Conflict
    areas.mainline.smoothness.test.lot: each 0.05 mi of lane

Settled
    areas.mainline.smoothness.test.lot: each 0.1 mi of lane

How to settle it
    Make the lot one segment or several whole ones.

Sources
    arithmetic: a lot holds at least one segment
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.lengths import lengths_in
from specwriter.rules.places import rides
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="the lot is shorter than the segment",
    grade=Grade.CONFLICT,
    basis="arithmetic",
    needs=("smoothness.segment", "smoothness.test.lot"),
    base="complete/diamond_grinding",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each lot all of whose lengths are below that of the segment."""
    for area, ride in rides(job):
        segment, test = given(ride.segment), given(ride.test)
        least = segment.reading.low or 0
        lengths = [each.reading.high or 0 for each in lengths_in(given(test.lot))]
        if not lengths or max(lengths) >= least:
            continue
        says = f"The lot is {test.lot}, and the index is judged over {segment}."
        at = [evidence(test, "lot", "lot of the test"), evidence(ride, "segment", "segment")]
        yield RULE.finding(area, says, at, (f"a lot of {segment}", "a shorter segment"))
