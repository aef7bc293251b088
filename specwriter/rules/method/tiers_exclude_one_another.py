"""Two tiers of a test that no set of readings meets.

Looks at
    The tiers of a test, two by two, and the limit that each reading must meet.

Why it matters
    Two shares that make more than 100 percent have a reading in common. Where their limits have
    no value in common, that reading cannot exist: every lot fails, however it is cut.

Conflict
    areas.runway.testing.groove_depth.statistic: share
    areas.runway.testing.groove_depth.tiers:
      - {share: at least 90 percent, limit: at most 3/16 in}
      - {share: at least 60 percent, limit: at least 1/4 in}

Settled
    areas.runway.testing.groove_depth.statistic: share
    areas.runway.testing.groove_depth.tiers:
      - {share: at least 90 percent, limit: at least 3/16 in}
      - {share: at least 60 percent, limit: at least 1/4 in}

How to settle it
    Correct the limit or the share of one tier.

Sources
    arithmetic: the rule of inclusion and exclusion
    FAA AC 150/5370-10H, item P-621, 2018 (from memory): 90, 60 and 10 percent of the readings
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import combinations

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.method._tiers import stated
from specwriter.rules.rule import Rule
from specwriter.trade.tiers import exclude

RULE = Rule(
    title="two tiers of a test exclude one another",
    grade=Grade.CONFLICT,
    basis="arithmetic",
    base="runway_grooving",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each pair of tiers without a reading that could meet both."""
    for area in job.areas.values():
        for tiers in stated(area, lambda value: value.reading):
            for one, other in combinations(tiers, 2):
                if exclude(one.tier, other.tier):
                    says = (
                        f"No lot can have {one.words} and {other.words}: the shares make more "
                        "than 100 percent, and no value meets both limits."
                    )
                    settle = ("correct a limit", "correct a share")
                    yield RULE.finding(area, says, (*one.evidence, *other.evidence), settle)
