"""Joints required or described where the pavement has none.

Looks at
    The kind of pavement against joint spacing, faulting, resealing and the match at joints.

Why it matters
    Asphalt and continuously reinforced concrete have no transverse joints. A requirement on them
    was carried over from another job, and its test and its pay have nothing to stand on.

Conflict
    conditions.pavement: asphalt
    areas.mainline.land: null
    areas.mainline.joint_match: at most 1/16 in

Settled
    conditions.pavement: jointed_plain_concrete
    areas.mainline.land: null
    areas.mainline.joint_match: at most 1/16 in

How to settle it
    Correct the kind of pavement, or take the statement about joints out.
    A step at cracks can be limited by name.

Sources
    common practice, no source: these pavements are built without transverse joints
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Evidence, Finding, Grade
from specwriter.model import Job
from specwriter.rules.places import ASPHALT, words
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="joints are named, and the pavement has none",
    grade=Grade.CAUTION,
    basis="practice",
    needs=("conditions.pavement",),
    by_site=True,
)


def check(job: Job) -> Iterator[Finding]:
    """One finding that names every statement about joints of a pavement without joints."""
    conditions = job.conditions
    if conditions.pavement not in (*ASPHALT, "continuously_reinforced_concrete"):
        return
    named = [*_of_conditions(job), *_of_areas(job)]
    if not named:
        return
    says = (
        f"{words(conditions.pavement).capitalize()} has no transverse joints, and the job speaks "
        f"of {' and '.join(each.label for each in named)}."
    )
    settle = ("correct the kind of pavement", "take the statement out")
    at = [*named, evidence(conditions, "pavement", "pavement")]
    yield RULE.finding(None, says, at, settle)


def _of_conditions(job: Job) -> Iterator[Evidence]:
    conditions = job.conditions
    if conditions.joint_spacing is not None:
        yield evidence(conditions, "joint_spacing", "joint spacing")
    if conditions.joint_reservoir_depth is not None:
        yield evidence(conditions, "joint_reservoir_depth", "joint reservoir depth")
    # The seals are those of the contract's pavement, not of one that an area states for itself.
    of_contract = conditions.path_to("pavement") == "conditions.pavement"
    if conditions.joint_resealing == "this_contract" and of_contract:
        yield evidence(conditions, "joint_resealing", "joint resealing")


def _of_areas(job: Job) -> Iterator[Evidence]:
    for area in job.areas.values():
        if area.joint_match is not None:
            yield evidence(area, "joint_match", "joint match")
