"""An edition that was not printed when the provision was written, or long before.

Looks at
    The years in the editions of test methods, against the date of the provision and 1950.

Why it matters
    A year that cannot be right is a slip that the laboratory settles by itself: it takes the
    edition on its shelf, and nobody can say that it was the wrong one.

Conflict
    areas.mainline.smoothness.test.edition: "2041"

Settled
    areas.mainline.smoothness.test.edition: 2014 (2018)

How to settle it
    Correct the year.

Sources
    arithmetic: an edition is not younger than the contract that names it
    common practice, no source: no test method of this trade is older than 1950
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from specwriter.diagnostic import Evidence, Finding, Grade
from specwriter.model import Job
from specwriter.model.results import Test, TextureDepth
from specwriter.rules.rule import Rule, evidence, given
from specwriter.rules.texts import nodes

RULE = Rule(
    title="the edition is of no year in which it can have been printed",
    grade=Grade.CAUTION,
    basis="arithmetic",
    needs=("project.date",),
    base="complete/diamond_grinding",
)

_YEAR = re.compile(r"\b\d{4}\b")
_OLDEST = 1950


def check(job: Job) -> Iterator[Finding]:
    """One finding for each edition with such a year."""
    newest = int(given(job.project.date)[:4])
    for place in _editions(job):
        years = [int(each) for each in _YEAR.findall(place.written)]
        if all(_OLDEST <= year <= newest for year in years):
            continue
        says = f"The edition is {place.written}, and the provision of {newest}."
        yield RULE.finding(None, says, [place], ("correct the year",))


def _editions(job: Job) -> Iterator[Evidence]:
    for test in nodes(job, Test):
        if test.edition:
            yield evidence(test, "edition", "edition of the test")
    for depth in nodes(job, TextureDepth):
        if depth.edition:
            yield evidence(depth, "edition", "edition of the method")
