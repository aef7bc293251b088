"""Grinding without a limit on how much may go.

Looks at
    Ground areas: the greatest removal, or what must be left of slab, cover, asphalt or joint
    reservoir.

Why it matters
    The remedy for nearly every failed test of a ground surface is to grind again. Without a
    limit on depth each remedy takes more of the slab, opens the joints and comes nearer to the
    steel, and no one has decided where it ends.

Conflict
    areas.mainline.removal: null

Settled
    areas.mainline.removal: null
    areas.mainline.removal.thickness_after: at least 8-1/2 in

How to settle it
    State the greatest removal, or the thickness, cover or reservoir that must be left.

Sources
    Maryland Standard Specifications, section 509, undated: at most 1/2 in altogether
    FHWA Federal Lands section 401.16, 2014: grinding to at most 12.5 percent of the thickness
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Area, Job
from specwriter.rules.places import GRINDING
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="no limit on how much may be ground away",
    grade=Grade.OPEN,
    basis="published",
    applies_to=GRINDING,
    quiet_after=("no-depth-limit-over-steel",),
    gap=True,
    base="complete/diamond_grinding",
)

_LEFT = (
    "cover_after",
    "thickness_after",
    "reservoir_after",
    "asphalt_after",
    "overlay_after",
    "section_modulus_after",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each ground area without any limit on the removal."""
    for area in job.areas.values():
        if _limited(area):
            continue
        says = (
            "The surface may be ground, and ground again after a failed test, with no limit on "
            "how much of the slab goes."
        )
        at = [evidence(area, "texture", "texture")]
        settle = (
            "state the greatest removal (removal.depth)",
            "state what must be left (removal.thickness_after, removal.cover_after)",
        )
        yield RULE.finding(area, says, at, settle)


def _limited(area: Area) -> bool:
    """True where the removal has a greatest value, or something must be left of what is cut."""
    removal = area.removal
    if removal is None:
        return False
    capped = removal.depth is not None and removal.depth.interval.high is not None
    return capped or any(getattr(removal, key) for key in _LEFT)
