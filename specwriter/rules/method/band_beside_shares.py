"""A band for each groove beside a test that lets a share of the readings leave it.

Looks at
    Dimensions with a tolerance or a range, and the tiers of their test, where no statistic holds
    each reading to the band.

Why it matters
    A tolerance is met by every groove; shares are met by a lot. A groove outside the band is then
    refused by one clause and accepted by the other, and nothing says which of them governs.

Conflict
    areas.runway.groove.depth: 1/4 in ± 1/16 in
    areas.runway.testing.groove_depth.statistic: share
    areas.runway.testing.groove_depth.tiers:
      - {share: at least 90 percent, limit: at least 3/16 in}

Settled
    areas.runway.groove.depth: 1/4 in
    areas.runway.testing.groove_depth.statistic: share
    areas.runway.testing.groove_depth.tiers:
      - {share: at least 90 percent, limit: at least 3/16 in}

How to settle it
    Keep one of the two: a band with a test of each reading, or a bare value with shares.

Sources
    UFC 3-260-02, chapter 21, 2001: a band for each groove
    FAA AC 150/5370-10H, item P-621, 2018 (from memory): 90, 60 and 10 percent of the readings
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.method._tiers import dimension_of
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="a band for each groove stands beside shares of the readings",
    grade=Grade.OPEN,
    basis="practice",
    base="runway_grooving",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each test by shares of a dimension that has a band."""
    for area in job.areas.values():
        for key, test in area.testing.items():
            found = dimension_of(area, key)
            if not test.tiers or test.statistic != "share" or test.share or found is None:
                continue
            node, name, value = found
            if value.form == "value":
                continue
            tier = test.tiers[0]
            says = (
                f"Each {key.replace('_', ' ')} is to be {value}, and the test accepts {tier.share} "
                f"of the readings {tier.limit}; nothing says which of them governs."
            )
            at = [
                evidence(node, name, key.replace("_", " ")),
                evidence(tier, "share", "share of the readings"),
            ]
            settle = ("statistic: each, without shares", "a value without a band, with shares")
            yield RULE.finding(area, says, at, settle)
