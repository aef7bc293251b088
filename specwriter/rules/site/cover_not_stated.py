"""Steel near the surface, and no word on how deep it lies.

Looks at
    The kind of pavement, the place, and whether the cover to the steel is given.

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
from specwriter.rules.places import REINFORCED, words
from specwriter.rules.rule import Rule, evidence

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
    if conditions.pavement not in REINFORCED or conditions.cover_to_steel is not None:
        return
    at = [
        evidence(conditions, "pavement", "pavement"),
        *(evidence(area, "texture", "texture") for area in job.areas.values()),
    ]
    says = (
        f"The pavement is {words(conditions.pavement)}, and the job does not say how much concrete "
        "lies above its steel."
    )
    yield RULE.finding(None, says, at, ("give the least cover found by a survey",))
