"""A share of readings that is every reading.

Looks at
    The share of the readings that must pass, in a test or in one of its tiers, and the number of
    readings in a lot.

Why it matters
    Of 5 readings, 90 percent are 4.5: all 5 must pass, and the allowance that the share promises
    is none. The bidder prices a lot that may hold one bad reading, and it may not.

Conflict
    areas.runway.testing.groove_depth.readings: 5
    areas.runway.testing.groove_depth.statistic: share
    areas.runway.testing.groove_depth.share: at least 90 percent

Settled
    areas.runway.testing.groove_depth.readings: 15
    areas.runway.testing.groove_depth.statistic: share
    areas.runway.testing.groove_depth.share: at least 90 percent

How to settle it
    Take more readings in a lot, or judge each reading.

Sources
    arithmetic: a number of readings is whole
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Area, Job
from specwriter.model.results import Test, Tier
from specwriter.quantity import Quantity
from specwriter.rules.method._tests import tests
from specwriter.rules.rule import Rule, evidence
from specwriter.trade.tiers import passing

RULE = Rule(
    title="a share of the readings is every reading",
    grade=Grade.CAUTION,
    basis="arithmetic",
    quiet_after=("mean-of-one-reading",),
    base="runway_grooving",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each share below 100 percent that leaves no reading over."""
    for area in job.areas.values():
        for test in tests(area):
            if test.statistic == "share" and test.share is not None:
                yield from _of(area, test, test, test.share)
            for tier in test.tiers:
                yield from _of(area, test, tier, tier.share)


def _of(area: Area, test: Test, node: Test | Tier, share: Quantity) -> Iterator[Finding]:
    least, count = share.interval.low, test.readings.nominal if test.readings else None
    if share.form == "at_most" or least is None or count is None or count.denominator != 1:
        return
    if least >= 1 or passing(least, int(count)) < count:
        return
    says = f"{str(share).capitalize()} of {test.readings} readings are all {test.readings} of them."
    at = [evidence(node, "share", "share of the readings"), evidence(test, "readings", "readings")]
    yield RULE.finding(area, says, at, ("take more readings in a lot", "judge each reading"))
