"""An improvement counted from an existing roughness of another index.

Looks at
    The improvement that is asked for, the index, and the existing roughness of the pavement,
    which the job states as MRI.

Why it matters
    A percentage of one index cannot be taken from a value of another. Part of the improvement,
    or all of it, would come from the change of index.

Conflict
    conditions.existing_mri: 140 in/mi
    areas.mainline.smoothness.index: HRI
    areas.mainline.smoothness.improvement: at least 40 percent

Settled
    conditions.existing_mri: 140 in/mi
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.improvement: at least 40 percent

How to settle it
    Ask for the improvement in the index of the existing profile, or measure that again.

Sources
    AASHTO R 43-13(2017), section 3.1: the indexes are defined differently
    project calculation: two unlike wheel paths give an HRI of 0.71 times the MRI
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.places import rides
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="the existing roughness is given in another index",
    grade=Grade.CAUTION,
    basis="published",
    needs=("conditions.existing_mri", "smoothness.index", "smoothness.improvement"),
    quiet_after=("index-instrument",),
    by_site=True,
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each improvement in HRI or PI beside an existing MRI."""
    for area, ride in rides(job):
        if ride.index not in ("HRI", "PI"):
            continue
        says = (
            f"{ride.improvement} of the {ride.index} is asked for, and the existing roughness is "
            f"an MRI of {job.conditions.existing_mri}; the one is no share of the other."
        )
        at = [
            evidence(ride, "index", "smoothness index"),
            evidence(ride, "improvement", "improvement"),
            evidence(job.conditions, "existing_mri", "existing MRI"),
        ]
        settle = ("index: MRI", f"measure the {ride.index} before the first cut, as its base")
        yield RULE.finding(area, says, at, settle)
