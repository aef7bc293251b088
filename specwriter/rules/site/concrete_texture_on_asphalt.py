"""A texture of ground concrete asked of asphalt.

Looks at
    Next generation concrete surface on asphalt, and land or ridge limits on ground asphalt.

Why it matters
    The texture lives from strips of concrete that stand between the blade cuts. In asphalt the
    strips are stone held by bitumen: they crumble and close under traffic, so a limit on them
    may be met on the first day and not later.

Conflict
    conditions.pavement: asphalt
    areas.mainline.land: null
    areas.mainline.ridge.height: 1/16 in

Settled
    conditions.pavement: asphalt
    areas.mainline.land: null
    areas.mainline.removal.depth: at most 1/2 in

How to settle it
    Correct the kind of pavement, or limit depth, evenness and the asphalt that is left instead.

Sources
    common practice, no source: ground asphalt is judged by evenness and depth, not by its fins
    Maryland Standard Specifications 509, undated: grinds concrete and asphalt with a depth limit
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Evidence, Finding, Grade
from specwriter.model import Area, Job
from specwriter.rules.places import ASPHALT, GRINDING, words
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="a texture of concrete is asked of asphalt",
    grade=Grade.CAUTION,
    basis="practice",
    needs=("conditions.pavement",),
    applies_to=GRINDING,
    by_site=True,
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each ground area of asphalt that is to have the texture of concrete."""
    if job.conditions.pavement not in ASPHALT:
        return
    for area in job.areas.values():
        at = list(_of_concrete(area))
        if not at:
            continue
        says = (
            f"The pavement is {words(job.conditions.pavement)}, and the job asks for "
            f"{' and '.join(f'{each.label} {words(each.written)}' for each in at)}."
        )
        at.append(evidence(job.conditions, "pavement", "pavement"))
        settle = ("correct the kind of pavement", "limit depth and evenness instead")
        yield RULE.finding(area, says, at, settle)


def _of_concrete(area: Area) -> Iterator[Evidence]:
    if area.texture == "next_generation_concrete_surface":
        yield evidence(area, "texture", "texture")
        return
    if area.land is not None and area.land.width is not None:
        yield evidence(area.land, "width", "land width")
    if area.ridge is not None and area.ridge.height is not None:
        yield evidence(area.ridge, "height", "ridge height")
