"""A mean or a share asked of a single reading.

Looks at
    The statistic and the number of readings of every test.

Why it matters
    The mean of one reading is that reading, and a share of it is all or nothing. Either more
    readings were meant or each reading was to count.

Conflict
    areas.mainline.testing.groove_depth: {readings: 1, statistic: mean}

Settled
    areas.mainline.testing.groove_depth: {readings: 10, statistic: mean}

How to settle it
    Raise the number of readings in a lot, or judge each reading.

Sources
    arithmetic: the mean of one reading is the reading
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.method._tests import tests
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="a mean of one reading",
    grade=Grade.CAUTION,
    basis="arithmetic",
    quiet_after=("one-reading-of-texture",),
)

_OF_SEVERAL = ("mean", "mean_and_each", "share")


def check(job: Job) -> Iterator[Finding]:
    """One finding for each test that needs several readings and takes one."""
    for area in job.areas.values():
        for test in tests(area):
            if test.statistic not in _OF_SEVERAL or test.readings is None:
                continue
            if test.readings.interval.high != 1:
                continue
            statistic = test.statistic.replace("_", " ")
            says = f"The {statistic} of {test.readings} reading is that reading."
            at = [evidence(test, "readings", "readings"), evidence(test, "statistic", "statistic")]
            settle = ("take more readings in a lot", "statistic: each")
            yield RULE.finding(area, says, at, settle)
