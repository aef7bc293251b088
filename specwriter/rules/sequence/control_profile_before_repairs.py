"""An improvement measured from a profile taken before the repairs.

Looks at
    The order of the work where an improvement in percent is asked for: the first profile run
    against the repairs.

Why it matters
    Repairs change the ride by themselves. A control profile taken before them credits the
    grinding with what the patches did, or charges it with their bumps.

Conflict
    sequence: [control profile, slab repairs, grinding, profile test]
    areas.mainline.smoothness: {index: MRI, improvement: at least 40 percent}

Settled
    sequence: [slab repairs, control profile, grinding, profile test]
    areas.mainline.smoothness: {index: MRI, improvement: at least 40 percent}

How to settle it
    Take the control profile after the repairs and before the first cut.

Sources
    common practice, no source: the control profile is taken on the surface that is then cut
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.places import rides
from specwriter.rules.rule import Rule, evidence
from specwriter.rules.steps import steps

RULE = Rule(
    title="the control profile is taken before the repairs",
    grade=Grade.CAUTION,
    basis="practice",
    needs=("sequence", "smoothness.improvement"),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each improvement whose control profile comes before repairs."""
    order = list(steps(job))
    first_cut = next((step.number for step in order if step.cuts), len(order))
    runs = [step for step in order if step.kind == "profile" and step.number < first_cut]
    repairs = [step for step in order if step.kind == "repair" and step.number < first_cut]
    if not runs or not repairs or runs[-1].number > repairs[-1].number:
        return
    for area, ride in rides(job):
        says = (
            f"An improvement of {ride.improvement} is counted from {runs[-1].words}, and "
            f"{repairs[-1].words} come after that."
        )
        at = [
            runs[-1].evidence,
            repairs[-1].evidence,
            evidence(ride, "improvement", "improvement"),
        ]
        yield RULE.finding(area, says, at, (f"the control profile after {repairs[-1].words}",))
