"""A limit that runs the wrong way.

Looks at
    Limits that only make sense as a least value (cover left, texture depth, friction, share of
    the area) and limits that only make sense as a greatest one (roughness, steps, gaps, noise).

Why it matters
    "At most 95 percent" of the area textured asks for bare strips. Read by its words the clause
    rejects what it means to buy, and one word decides the dispute.

Conflict
    areas.mainline.coverage.share: at most 95 percent

Settled
    areas.mainline.coverage.share: at least 95 percent

How to settle it
    Turn the limit round.

Sources
    Maryland Standard Specifications 509, undated copy: a lost negative turns a limit round
    common practice, no source: which way each requirement of a texture runs
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.quantity import Quantity
from specwriter.rules.measures import measures
from specwriter.rules.rule import Rule

_LEAST = frozenset(
    {
        "coverage.share",
        "texture_depth.at_least",
        "texture_depth.single_at_least",
        "texture_depth.end_of_life_at_least",
        "friction.at_least",
        "removal.cover_after",
        "removal.thickness_after",
        "removal.reservoir_after",
        "removal.asphalt_after",
        "removal.overlay_after",
        "removal.section_modulus_after",
        "smoothness.improvement",
    }
)
_GREATEST = frozenset(
    {
        "groove.alignment",
        "flush_grind.land",
        "blade.failed_allowed",
        "coverage.unground_strip",
        "joint_match",
        "edge_ridge",
        "cross_slope.tolerance",
        "straightedge.tolerance",
        "smoothness.limit",
        "smoothness.localized.limit",
        "texture_depth.at_most",
        "noise.at_most",
    }
)

RULE = Rule(
    title="a limit runs the wrong way",
    grade=Grade.CONFLICT,
    basis="wording",
    echo=True,
    slip=True,
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each limit with the wrong word before its number."""
    for area in job.areas.values():
        for each in measures(area):
            right = "at least" if each.name in _LEAST else "at most"
            if each.name not in _LEAST | _GREATEST or not _turned(each.value, right):
                continue
            says = (
                f"The {each.label} is {each.value}: what is {_better(right)} than that would be "
                "refused."
            )
            amount = each.value.amounts[0]
            settle = (f"{right} {amount.text} {amount.unit.symbol}".rstrip(),)
            yield RULE.finding(area, says, [each.evidence], settle)


def _turned(value: Quantity, right: str) -> bool:
    return value.form == ("at_most" if right == "at least" else "at_least")


def _better(right: str) -> str:
    return "more" if right == "at least" else "less"
