"""A blade count fixed for stone that nobody knows.

Looks at
    Grooves per foot or a blade set that is prescribed, where the hardness of the aggregate is
    unknown.

Why it matters
    Hard stone wants blades closer together, soft stone wider apart. A count fixed without knowing
    the stone makes the owner answer for the texture that comes of it.

Conflict
    conditions.coarse_aggregate.hardness: unknown
    areas.mainline.groove.per_foot: 52 to 55 per ft

Settled
    conditions.coarse_aggregate.hardness: medium
    areas.mainline.groove.per_foot: 52 to 55 per ft

How to settle it
    Have the aggregate tested, or leave the blades to the contractor and limit land and depth.

Sources
    Iowa DOT Standard Specifications 2532, undated: the contractor chooses the blades
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Evidence, Finding, Grade
from specwriter.model import Area, Job
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="the blade set is fixed, and the aggregate is unknown",
    grade=Grade.CAUTION,
    basis="published",
    needs=("conditions.coarse_aggregate.hardness",),
    applies_to=("diamond_grinding",),
    by_site=True,
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each ground area with a prescribed blade set in unknown stone."""
    stone = given(job.conditions.coarse_aggregate)
    if stone.hardness != "unknown":
        return
    for area in job.areas.values():
        at = list(_prescribed(area))
        if not at:
            continue
        at.append(evidence(stone, "hardness", "hardness of the aggregate"))
        says = f"The {at[0].label} is fixed at {at[0].written} for stone of unknown hardness."
        settle = ("have the aggregate tested", "leave the blades to the contractor")
        yield RULE.finding(area, says, at, settle)


def _prescribed(area: Area) -> Iterator[Evidence]:
    if area.groove is not None and area.groove.per_foot is not None:
        yield evidence(area.groove, "per_foot", "number of grooves per foot")
    if area.blade is not None and area.blade.spacer is not None:
        yield evidence(area.blade, "spacer", "spacer")
