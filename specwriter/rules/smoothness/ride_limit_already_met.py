"""A smoothness limit that the old surface already meets.

Looks at
    The smoothness limit of a ground area against the existing MRI.

Why it matters
    Grinding is bought for a better ride. A limit no lower than the present roughness accepts
    work that has improved nothing.

Conflict
    conditions.existing_mri: 70 in/mi
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.limit: at most 75 in/mi

Settled
    conditions.existing_mri: 128 in/mi
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.limit: at most 75 in/mi

How to settle it
    Lower the limit, ask for an improvement, or correct the existing MRI.

Sources
    arithmetic: the limit is compared with the existing index as both are written
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.places import GROOVING, rides
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="the old surface already meets the smoothness limit",
    grade=Grade.CAUTION,
    basis="arithmetic",
    needs=("smoothness.index", "smoothness.limit"),
    quiet_after=("index-instrument", "index-unit"),
    by_site=True,
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each ground area whose limit is not below the existing MRI."""
    existing = job.conditions.existing_mri
    if existing is None or existing.interval.high is None:
        return
    for area, ride in rides(job):
        limit = given(ride.limit)
        if area.texture in GROOVING or ride.index != "MRI" or ride.improvement is not None:
            continue
        if limit.interval.high is None or limit.interval.high < existing.interval.high:
            continue
        says = f"The surface has {existing} before it is ground, and {limit} is asked for after."
        at = [
            evidence(ride, "limit", "smoothness limit"),
            evidence(job.conditions, "existing_mri", "existing MRI"),
        ]
        settle = (f"a limit below {existing}", "an improvement in percent")
        yield RULE.finding(area, says, at, settle)
