"""A smoother ride asked of grooves.

Looks at
    Areas that are only grooved: their smoothness limit against the existing MRI, and any
    improvement that is asked for.

Why it matters
    Grooving saws narrow channels and leaves the surface between them at its old height. The
    ride stays what it was, so the contractor cannot meet the limit with the work that is paid.

Conflict
    conditions.existing_mri: 140 in/mi
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.limit: at most 75 in/mi

Settled
    conditions.existing_mri: 70 in/mi
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.limit: at most 75 in/mi

How to settle it
    Grind before grooving, or take the smoothness limit out of the grooved area.
    To protect the existing ride, set the limit no lower than the existing index.

Sources
    common practice, no source: grooves leave the surface between them as it is
    project calculation: cutting grooves changes the IRI of a true profile by about 1 in/mi
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Evidence, Finding, Grade
from specwriter.model import Area, Job
from specwriter.model.results import Smoothness
from specwriter.rules.places import AIRFIELD, GROOVING, rides
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="grooves do not make the ride smoother",
    grade=Grade.CONFLICT,
    basis="practice",
    needs=("smoothness",),
    quiet_after=("index-instrument", "index-unit"),
    base="longitudinal_grooving",
    by_site=True,
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each area that is grooved, not ground, and is to ride better than before."""
    if any("grind" in step.lower() for step in job.sequence):
        return
    for area, ride in rides(job):
        if area.texture in GROOVING and area.place not in AIRFIELD:
            yield from _area(job, area, ride)


def _area(job: Job, area: Area, ride: Smoothness) -> Iterator[Finding]:
    settle = ("grind the area before it is grooved", "take the requirement out of this area")
    if ride.improvement is not None:
        at = [evidence(ride, "improvement", "improvement"), evidence(area, "texture", "texture")]
        says = f"An improvement of {ride.improvement} is asked of an area that is only grooved."
        yield RULE.finding(area, says, at, settle)
    elif exceeded := _exceeded(job, ride):
        says = (
            f"The surface now has {job.conditions.existing_mri}, grooving leaves it there, and "
            f"{ride.limit} is asked for."
        )
        yield RULE.finding(area, says, exceeded, settle)


def _exceeded(job: Job, ride: Smoothness) -> list[Evidence]:
    """Both values, when the existing MRI is above the limit; else nothing."""
    existing, limit = job.conditions.existing_mri, ride.limit
    if existing is None or limit is None or ride.index not in ("IRI", "MRI"):
        return []
    low, high = existing.interval.low, limit.reading.high
    if low is None or high is None or low <= high:
        return []
    return [
        evidence(ride, "limit", "smoothness limit"),
        evidence(job.conditions, "existing_mri", "existing MRI"),
    ]
