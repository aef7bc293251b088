"""A layer that the pavement does not have.

Looks at
    The thickness of asphalt, or the asphalt to be left, where the pavement has none, and the
    thickness of a slab where it is asphalt alone.

Why it matters
    Either the kind of pavement is wrong or a limit is copied from another job. The first changes
    the cure, the blades and the residue, the second is a limit that nobody can measure.

Conflict
    conditions.pavement: jointed_plain_concrete
    conditions.asphalt_thickness: 4 in

Settled
    conditions.pavement: composite
    conditions.asphalt_thickness: 4 in

How to settle it
    Correct the kind of pavement, or take the layer out.

Sources
    common practice, no source: asphalt over concrete is a composite pavement
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Evidence, Finding, Grade
from specwriter.model import Job
from specwriter.rules.places import ASPHALT, words
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="a layer that the pavement does not have",
    grade=Grade.CAUTION,
    basis="practice",
    needs=("conditions.pavement",),
    by_site=True,
    slip=True,
)


def check(job: Job) -> Iterator[Finding]:
    """One finding with every layer that the kind of pavement rules out."""
    conditions = job.conditions
    pavement = given(conditions.pavement)
    named = list(_slab(job) if pavement in ASPHALT else _asphalt(job))
    if pavement == "composite" or not named:
        return
    says = (
        f"The pavement is {words(pavement)}, and the job speaks of "
        f"{' and '.join(dict.fromkeys(each.label for each in named))}."
    )
    at = [*named, evidence(conditions, "pavement", "pavement")]
    yield RULE.finding(None, says, at, ("correct the kind of pavement", "take the layer out"))


def _slab(job: Job) -> Iterator[Evidence]:
    if job.conditions.slab_thickness is not None:
        yield evidence(job.conditions, "slab_thickness", "a slab")


def _asphalt(job: Job) -> Iterator[Evidence]:
    if job.conditions.asphalt_thickness is not None:
        yield evidence(job.conditions, "asphalt_thickness", "a layer of asphalt")
    for area in job.areas.values():
        if area.removal is not None and area.removal.asphalt_after is not None:
            yield evidence(area.removal, "asphalt_after", "asphalt that is left")
