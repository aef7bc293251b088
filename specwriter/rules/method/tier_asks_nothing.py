"""A tier of a test that another limit already covers.

Looks at
    The tiers of a test, two by two, and the limit that each reading must meet.

Why it matters
    A groove of 1/4 in with 1/16 in to either side, judged reading by reading, lies between 3/16 in
    and 5/16 in. To ask 90 percent of the readings for 3/16 in or more beside it asks for nothing,
    and the bidder cannot tell which of the two is meant. The two schemes are printed by different
    documents; one of them governs.

Conflict
    areas.runway.groove.depth: 1/4 in ± 1/16 in
    areas.runway.testing.groove_depth.statistic: each
    areas.runway.testing.groove_depth.tiers:
      - {share: at least 90 percent, limit: at least 3/16 in}

Settled
    areas.runway.groove.depth: 1/4 in ± 1/16 in
    areas.runway.testing.groove_depth.statistic: each
    areas.runway.testing.groove_depth.tiers:
      - {share: at least 60 percent, limit: at least 1/4 in}

How to settle it
    Take the tier out, or judge the lot by the share of its readings.

Sources
    arithmetic: what holds for all readings holds for a share of them
    FAA AC 150/5370-10H, item P-621, 2018 (from memory): width and depth by percentages
    UFC 3-260-02, chapter 21, 2001: a tolerance for each groove
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import permutations

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.method._tiers import Stated, stated
from specwriter.rules.rule import Rule
from specwriter.trade.tiers import asks_nothing

RULE = Rule(
    title="a tier of a test asks for nothing",
    grade=Grade.CAUTION,
    basis="arithmetic",
    base="runway_grooving",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each tier that another limit of the same test covers."""
    for area in job.areas.values():
        for tiers in stated(area, lambda value: value.interval):
            for one, other in permutations(tiers, 2):
                if asks_nothing(one.tier, other.tier) and not _is_later_twin(one, other, tiers):
                    says = f"With {other.words}, a lot has {one.words} already."
                    settle = ("take the tier out", "judge the lot by the share of its readings")
                    yield RULE.finding(area, says, (*one.evidence, *other.evidence), settle)


def _is_later_twin(one: Stated, other: Stated, tiers: list[Stated]) -> bool:
    """True for one of two equal tiers, so that they are told once."""
    return one.tier == other.tier and tiers.index(one) < tiers.index(other)
