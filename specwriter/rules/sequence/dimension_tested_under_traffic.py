"""Dimensions of the cut that are measured under traffic.

Looks at
    The time of the tests of groove, land, ridge and texture, where it is after the opening to
    traffic, and the remedy cuts again.

Why it matters
    Once traffic runs, a test and a second cut need another lane closure that nobody has priced,
    and the surface that is measured has been worn by traffic.

Conflict
    areas.mainline.testing.texture.when: 30 days after the lane opens to traffic

Settled
    areas.mainline.testing.texture.when: before the lane opens to traffic

How to settle it
    Measure in the shift in which it is cut, or say who closes the lane and who pays for it.

Sources
    Iowa DOT Construction Manual 12.41, 2008: the land is measured daily, for each machine
    common practice, no source: dimensions are accepted before the lane is given back
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.model.results import Test
from specwriter.rules.rule import Rule, evidence

_TESTS = (
    *("texture", "groove_width", "groove_depth", "groove_spacing", "land_width", "ridge_height"),
    *("coverage", "joint_match", "edge_ridge"),
)
_LATE = re.compile(
    r"\bafter (?:(?!before\b)\w+ ){0,4}?(?:open\w*|(?:under|given to|released? to) traffic)",
    re.IGNORECASE,
)
_CUTS = re.compile(r"\b(?:re-?)?(?:grind|saw|groove|cut)\b", re.IGNORECASE)
_NOT = re.compile(r"\b(?:not|no|never|without)\b", re.IGNORECASE)

RULE = Rule(
    title="the cut is measured under traffic and cut again",
    grade=Grade.CAUTION,
    basis="practice",
    needs=("testing",),
    base="complete/diamond_grinding",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each dimension tested after the opening, with a remedy that cuts."""
    for area in job.areas.values():
        for name in _TESTS:
            test = area.testing.get(name)
            if test is None or not _late(test) or not _cuts_again(test):
                continue
            label = name.replace("_", " ")
            says = f"The {label} is tested {test.when}, and the remedy is to {test.remedy}."
            at = [
                evidence(test, "when", f"time of the {label} test"),
                evidence(test, "remedy", f"remedy of the {label} test"),
            ]
            yield RULE.finding(area, says, at, ("test in the shift in which it is cut",))


def _late(test: Test) -> bool:
    return bool(_LATE.search(test.when or ""))


def _cuts_again(test: Test) -> bool:
    remedy = test.remedy or ""
    return bool(_CUTS.search(remedy)) and not _NOT.search(remedy)
