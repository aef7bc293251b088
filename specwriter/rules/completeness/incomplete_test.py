"""A test that leaves something to be argued about.

Looks at
    Every test that the job states: method, place, time, who tests, lot, number of readings,
    statistic, remedy, retest and effect on pay.

Why it matters
    Each of these decides whether the same surface passes or fails. Ten readings judged by their
    mean and ten judged one by one are two different limits; without a lot nobody knows how much
    work one bad reading condemns, and without a remedy nobody knows what follows.

Conflict
    areas.mainline.testing.coverage.lot: null
    areas.mainline.testing.coverage.remedy: null

Settled
    areas.mainline.testing.coverage.lot: each shift
    areas.mainline.testing.coverage.remedy: grind the bare strip

How to settle it
    Fill in what is missing. "None" is an answer for the effect on pay.

Sources
    FHWA HIAM-20, attachment 3, 2010: what is measured, by which method, where and when
    FHWA review guide on measurement and payment, 1999: acceptance is stated with its test and lot
    Texas DOT PS&E manual, section 4.3, undated: vague measurement is a common basis of claims
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Evidence, Finding, Grade
from specwriter.model import Job
from specwriter.model.results import Test
from specwriter.rules.completeness._properties import Required, required
from specwriter.rules.prose import listed
from specwriter.rules.rule import Rule

RULE = Rule(
    title="a test is not complete",
    grade=Grade.OPEN,
    basis="practice",
    gap=True,
    base="complete/diamond_grinding",
)

_CELLS = {
    "where": "place",
    "when": "time",
    "by": "who tests",
    "lot": "lot",
    "readings": "number of readings",
    "statistic": "statistic",
    "remedy": "remedy",
    "retest": "retest",
    "pay_effect": "effect on pay",
}
"""Key of a test → what it is called in the document's list of open decisions."""


def check(job: Job) -> Iterator[Finding]:
    """One finding for each test with everything that it does not say."""
    for area in job.areas.values():
        for each in required(area):
            if each.test is None or not (missing := _missing(each, each.test)):
                continue
            left = listed(list(missing.values()))
            says = f"The test of the {each.title} ({each.key}) does not say: {left}."
            label = f"test of the {each.title}"
            written = each.test.method or each.test.device or "method not stated"
            at = [*each.limits, Evidence(path=each.test_path, label=label, written=written)]
            yield RULE.finding(area, says, at, ("state it with the test",))


def _missing(each: Required, test: Test) -> dict[str, str]:
    """Key → name of what the test leaves open."""
    method = {} if each.has_method or test.method or test.device else {"method": "method"}
    if test.statistic == "share" and test.share is None:
        method |= {"share": "share that must pass"}
    left = {key: name for key, name in _CELLS.items() if getattr(test, key) is None}
    if test.readings is not None and test.readings.nominal == 0:
        left |= {"readings": _CELLS["readings"]}
    return method | left
