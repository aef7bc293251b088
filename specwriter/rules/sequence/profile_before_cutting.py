"""The acceptance profile comes before the cut that it is to accept.

Looks at
    The order of the work against the time at which smoothness is measured.

Why it matters
    A profile run that stands before grinding measures the old surface. The sequence and the
    acceptance clause then name two times for one test.

Conflict
    sequence: [profile test, grinding, marking]
    areas.mainline.smoothness: {index: MRI, limit: at most 75 in/mi, measured: after_grinding}

Settled
    sequence: [grinding, profile test, marking]
    areas.mainline.smoothness: {index: MRI, limit: at most 75 in/mi, measured: after_grinding}

How to settle it
    Put a profile run after the cut; a control profile before it comes in addition.

Sources
    common practice, no source: a result is measured on the finished work
    arithmetic: the order of the steps as written
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.places import rides, words
from specwriter.rules.rule import Rule, evidence, given
from specwriter.rules.steps import CUTTING, steps

_AFTER = {
    "after_grinding": ("grinding", "texturing"),
    "after_grooving": ("grooving", "texturing"),
    "after_texturing": CUTTING,
}
"""The cuts that come before each time of the test."""

RULE = Rule(
    title="the profile run stands before the cut that it accepts",
    grade=Grade.CONFLICT,
    basis="practice",
    needs=("sequence", "smoothness.measured"),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each area accepted after a cut by a profile run that comes before it."""
    order = list(steps(job))
    runs = [step for step in order if step.kind == "profile"]
    for area, ride in rides(job):
        kinds = _AFTER.get(given(ride.measured))
        cuts = [step for step in order if kinds and step.kind in kinds]
        if not runs or not cuts or runs[-1].number > cuts[-1].number:
            continue
        says = (
            f"The ride is to be measured {words(ride.measured)}, and the last profile run, "
            f"{runs[-1].words}, comes before {cuts[-1].words}."
        )
        at = [
            runs[-1].evidence,
            cuts[-1].evidence,
            evidence(ride, "measured", "time of the test"),
        ]
        yield RULE.finding(area, says, at, (f"a profile run after {cuts[-1].words}",))
