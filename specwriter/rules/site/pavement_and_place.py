"""A kind of pavement that does not belong to the place.

Looks at
    The kind of pavement against the place of each area.

Why it matters
    Cure time, joints, depth limits and tests follow the kind of pavement. A wrong kind carries the
    rules of a road to an airfield, or the other way round, and nobody notices before the tests.

Conflict
    conditions.pavement: airfield_concrete

Settled
    conditions.pavement: jointed_plain_concrete

How to settle it
    Correct the kind of pavement or the place.

Sources
    common practice, no source: road, deck and airfield pavements are specified apart
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.places import AIRFIELD, words
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="pavement and place do not belong together",
    grade=Grade.CAUTION,
    basis="practice",
    needs=("conditions.pavement",),
    by_site=True,
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each area that cannot lie on that kind of pavement."""
    pavement = given(job.conditions.pavement)
    for area in job.areas.values():
        if not _apart(pavement, area.place):
            continue
        says = f"The place is a {words(area.place)}, and the pavement {words(pavement)}."
        at = [evidence(area, "place", "place"), evidence(job.conditions, "pavement", "pavement")]
        yield RULE.finding(area, says, at, ("correct the kind of pavement", "correct the place"))


def _apart(pavement: str, place: str) -> bool:
    """True when the pavement cannot lie there; plain names are used for both kinds of place."""
    if pavement == "bridge_deck_concrete":
        return place != "bridge_deck"
    return pavement.startswith("airfield") and place not in AIRFIELD
