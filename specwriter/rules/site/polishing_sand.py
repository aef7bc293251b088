"""Sand that polishes, in concrete that is to keep its friction.

Looks at
    The share of siliceous sand and the acid-insoluble residue of the fine aggregate, where an
    area has a friction limit.

Why it matters
    On concrete the sand gives the fine grip that a tyre feels in the wet. Carbonate sand can
    wear smooth, and no groove brings that grip back.

Conflict
    conditions.fine_aggregate: {siliceous: 10 percent}
    areas.mainline.friction: {measure: SN40S, at_least: at least 35}

Settled
    conditions.fine_aggregate: {siliceous: 60 percent}
    areas.mainline.friction: {measure: SN40S, at_least: at least 35}

How to settle it
    Blend in siliceous sand, show by the record of other pavements that this sand keeps its
    friction, or watch the friction after opening.

Sources
    Texas fine-aggregate polishing study, undated, second-hand: insoluble residue of 60 percent
    ACI 325.6R-88; memory, unverified: at least 25 percent of siliceous sand
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Evidence, Finding, Grade
from specwriter.model import Job
from specwriter.model.conditions import FineAggregate
from specwriter.rules.rule import Rule, evidence, given
from specwriter.trade.aggregate import LEAST_RESIDUE, LEAST_SILICEOUS

RULE = Rule(
    title="the sand may polish",
    grade=Grade.CAUTION,
    basis="published",
    needs=("conditions.fine_aggregate", "friction.at_least"),
    by_site=True,
)

_LEAST = (
    ("siliceous", "siliceous sand", LEAST_SILICEOUS),
    ("insoluble_residue", "acid-insoluble residue", LEAST_RESIDUE),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for a job with a friction limit and sand below a published share."""
    sand = given(job.conditions.fine_aggregate)
    low = list(_low(sand))
    if not low:
        return
    says = "; ".join(f"{at.label} {at.written}, usual {least} percent or more" for at, least in low)
    limits = [given(area.friction) for area in job.areas.values()]
    at = [each for each, _ in low]
    at += [evidence(each, "at_least", "friction number") for each in limits]
    settle = ("blend in siliceous sand", "show by other pavements that it keeps its friction")
    yield RULE.finding(None, f"The sand has {says}.", at, settle)


def _low(sand: FineAggregate) -> Iterator[tuple[Evidence, int]]:
    """Each share that lies below the published one, with that one in percent."""
    for key, name, least in _LEAST:
        share = getattr(sand, key)
        if share is not None and share.amounts[0].base < least:
            yield evidence(sand, key, name), int(least * 100)
