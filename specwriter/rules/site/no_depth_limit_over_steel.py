"""Grinding over steel without a limit on its depth.

Looks at
    Ground areas on reinforced concrete: a limit on the removal, or on the cover that is left.

Why it matters
    The contractor grinds as deep as the smoothness limit asks. Where nothing else stops the head,
    the steel does.

Conflict
    conditions.pavement: jointed_reinforced_concrete
    conditions.cover_to_steel: 2-1/2 in

Settled
    conditions.pavement: jointed_reinforced_concrete
    conditions.cover_to_steel: 2-1/2 in
    areas.mainline.removal.depth: at most 1/2 in

How to settle it
    Limit the depth of removal, or state the cover that must be left.

Sources
    Maryland Standard Specifications 509, undated: 1/2 in of total depth is not exceeded
    common practice, no source: reinforced pavements and decks get a depth limit of their own
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.places import GRINDING, REINFORCED, words
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="nothing limits the grinding over the steel",
    grade=Grade.OPEN,
    basis="practice",
    needs=("conditions.pavement",),
    applies_to=GRINDING,
    quiet_after=("cover-not-stated",),
    by_site=True,
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each ground area over steel with neither depth limit nor cover to keep."""
    if job.conditions.pavement not in REINFORCED or job.conditions.cover_to_steel is None:
        return
    for area in job.areas.values():
        removal = area.removal
        if removal is not None and (removal.depth or removal.cover_after):
            continue
        says = (
            f"{words(area.texture).capitalize()} on {words(job.conditions.pavement)} has neither "
            "a limit on the depth of removal nor a cover that must be left."
        )
        at = [
            evidence(area, "texture", "texture"),
            evidence(job.conditions, "cover_to_steel", "cover to steel"),
        ]
        settle = ("a limit on the depth of removal", "a cover to steel that must be left")
        yield RULE.finding(area, says, at, settle)
