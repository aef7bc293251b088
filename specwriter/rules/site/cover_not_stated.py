"""Steel near the surface, and no word on how deep it lies.

Looks at
    The kind of pavement, whether an area lies on a bridge deck, and whether the cover to the
    steel is given.

Why it matters
    Every cut takes cover from the steel. Without the cover that is there, nobody can tell how deep
    the blades may go, and an exposed or grooved bar rusts and bursts the surface.

Conflict
    conditions.pavement: continuously_reinforced_concrete

Settled
    conditions.pavement: continuously_reinforced_concrete
    conditions.cover_to_steel: 3 in
    areas.mainline.removal.depth: at most 1/2 in

How to settle it
    Give the least cover found by a survey, or have the contractor survey it before the first cut.

Sources
    memory, unverified: cover left = cover detailed - groove depth - grinding
    common practice, no source: a cover meter survey comes before any cut into reinforced concrete
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.places import ASPHALT, REINFORCED, words
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="the cover over the steel is not stated",
    grade=Grade.OPEN,
    basis="practice",
    needs=("conditions.pavement",),
    by_site=True,
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for a job that cuts reinforced concrete of unknown cover."""
    conditions = job.conditions
    if conditions.cover_to_steel is not None:
        return
    pavement = given(conditions.pavement)
    cut = [
        area
        for area in job.areas.values()
        if pavement in REINFORCED or (area.place == "bridge_deck" and pavement not in ASPHALT)
    ]
    if not cut:
        return
    where = words(pavement) if pavement in REINFORCED else "a bridge deck"
    at = [
        evidence(conditions, "pavement", "pavement"),
        *(evidence(area, "place", "place") for area in cut if area.place == "bridge_deck"),
        *(evidence(area, "texture", "texture") for area in cut),
    ]
    says = (
        f"What is cut is {where}, and the job does not say how much concrete lies above its steel."
    )
    yield RULE.finding(None, says, at, ("give the least cover found by a survey",))
