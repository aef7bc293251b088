"""A smoothness limit finer than the index is reported.

Looks at
    The smoothness limit against the step to which the index is rounded: reported_to, or without
    it the setting smoothness_resolution.

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
from dataclasses import dataclass

from specwriter.diagnostic import Evidence, Finding, Grade
from specwriter.model import Job
from specwriter.model.results import Smoothness
from specwriter.quantity import Quantity
from specwriter.rules.places import rides
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="the limit is finer than the index is reported",
    grade=Grade.CAUTION,
    basis="arithmetic",
    needs=("smoothness.limit",),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each limit that is no multiple of the reported place."""
    for area, ride in rides(job):
        limit, step = given(ride.limit), _step(job, ride)
        if step is None or not _is_between(limit, step.written):
            continue
        says = f"The limit is {limit}, and the index is reported to {step.written} ({step.name})."
        at = [evidence(ride, "limit", "smoothness limit"), step.at]
        yield RULE.finding(area, says, at, ("round the limit", "report to more places"))


@dataclass(frozen=True, slots=True, kw_only=True)
class _Step:
    """The step to which the index is reported, and who says so."""

    written: Quantity
    name: str
    at: Evidence


def _step(job: Job, ride: Smoothness) -> _Step | None:
    """The step of the job, or without one that of the house."""
    if ride.reported_to is not None:
        at = evidence(ride, "reported_to", "rounding of the index")
        return _Step(written=ride.reported_to, name="reported_to", at=at)
    settings = job.settings
    if settings is None or settings.smoothness_resolution is None:
        return None
    name = "setting smoothness_resolution"
    at = evidence(settings, "smoothness_resolution", name)
    return _Step(written=settings.smoothness_resolution, name=name, at=at)


def _is_between(limit: Quantity, step: Quantity) -> bool:
    """True for a limit that is no multiple of the step, in one unit."""
    value, place = limit.amounts[-1], step.amounts[0]
    return value.unit == place.unit and (value.value / place.value).denominator != 1
