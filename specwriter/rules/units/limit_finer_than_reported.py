"""A smoothness limit finer than the index is reported.

Looks at
    The smoothness limit against the setting smoothness_resolution.

Why it matters
    An index that is reported to whole in/mi cannot tell 75.4 from 75.0. Two people round it in
    two ways, and pay hangs on it.

Conflict
    settings.smoothness_resolution: 1 in/mi
    areas.mainline.smoothness: {index: MRI, limit: at most 75.5 in/mi}

Settled
    settings.smoothness_resolution: 0.1 in/mi
    areas.mainline.smoothness: {index: MRI, limit: at most 75.5 in/mi}

How to settle it
    Round the limit, or report the index to more places.

Sources
    arithmetic: the last place of the limit against the reported place
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.places import rides
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="the limit is finer than the index is reported",
    grade=Grade.CAUTION,
    basis="arithmetic",
    needs=("settings.smoothness_resolution", "smoothness.limit"),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each limit that is no multiple of the reported place."""
    settings = given(job.settings)
    place = given(settings.smoothness_resolution).amounts[0]
    for area, ride in rides(job):
        limit = given(ride.limit)
        amount = limit.amounts[-1]
        if amount.unit != place.unit or (amount.value / place.value).denominator == 1:
            continue
        says = (
            f"The limit is {limit}, and the index is reported to "
            f"{settings.smoothness_resolution} (setting smoothness_resolution)."
        )
        at = [
            evidence(ride, "limit", "smoothness limit"),
            evidence(settings, "smoothness_resolution", "setting smoothness_resolution"),
        ]
        yield RULE.finding(area, says, at, ("round the limit", "report to more places"))
