"""A limit and an improvement, without a word on which one counts.

Looks at
    Areas with both a smoothness limit and an improvement.

Why it matters
    "40 percent better, 60 in/mi" can mean both, or either. On a lane of 140 in/mi the one reading
    asks for 84, the other for 60.

Conflict
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.limit: at most 75 in/mi
    areas.mainline.smoothness.improvement: at least 40 percent

Settled
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.limit: at most 75 in/mi
    areas.mainline.smoothness.improvement: at least 40 percent
    areas.mainline.smoothness.whichever: less_strict

How to settle it
    State which one counts: the less strict or the stricter.

Sources
    arithmetic: the two ask for the same only where the existing index is limit / (1 - improvement)
    common practice, no source: contracts have it both ways
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.quantity import show
from specwriter.rules.places import rides
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="which of limit and improvement counts is not stated",
    grade=Grade.OPEN,
    basis="arithmetic",
    needs=("smoothness.limit", "smoothness.improvement"),
    quiet_after=("grooving-does-not-improve-ride", "index-instrument", "index-unit"),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each pair of limit and improvement that leaves the choice open."""
    for area, ride in rides(job):
        limit, improvement = given(ride.limit), given(ride.improvement)
        high, least = limit.interval.high, improvement.interval.low
        if ride.whichever or high is None or least is None or least >= 1:
            continue
        same = show(high / (1 - least), limit.unit, 0)
        says = (
            f"On lanes rougher than {same} the limit {limit} is the stricter, on smoother ones "
            f"{improvement} better is; the job does not say which one counts."
        )
        at = [
            evidence(ride, "limit", "smoothness limit"),
            evidence(ride, "improvement", "improvement"),
        ]
        yield RULE.finding(area, says, at, ("whichever: less_strict", "whichever: stricter"))
