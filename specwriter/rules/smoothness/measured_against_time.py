"""The stage of the profile run and the time of its test disagree.

Looks at
    The stage of the work at which smoothness is measured, against the time given with its test.

Why it matters
    Before the grooves are cut a point laser reads the ground surface, afterwards it reads the
    grooves. Two clauses that name two stages give two results and one limit.

Conflict
    areas.mainline.smoothness.measured: after_grinding
    areas.mainline.smoothness.test.when: before the lane is ground

Settled
    areas.mainline.smoothness.measured: after_grinding
    areas.mainline.smoothness.test.when: at most 7 days after the lane is ground

How to settle it
    Name one stage in both places.

Sources
    California memorandum UCD-ITS-RR-22-71, 2022: texture raises what a point laser reads
    common practice, no source: a test has one time
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.places import rides, words
from specwriter.rules.rule import Rule, evidence, given

_FEW = r"(?:(?!before\b|after\b|and\b|or\b)[\w-]+ ){0,4}?"
_GROUND, _GROOVED = r"(?:ground|grind\w*)", r"(?:groov\w*)"


def _says(word: str, work: str) -> re.Pattern[str]:
    return re.compile(rf"\b{word} {_FEW}{work}\b", re.IGNORECASE)


_OTHERS: dict[str, tuple[re.Pattern[str], ...]] = {
    "before_texturing": (_says("after", _GROUND), _says("after", _GROOVED)),
    "after_grinding": (_says("before", _GROUND), _says("after", _GROOVED)),
    "after_grooving": (_says("before", _GROUND), _says("before", _GROOVED)),
    "after_texturing": (_says("before", _GROUND), _says("before", _GROOVED)),
}
"""Stage → the times that are another stage."""

RULE = Rule(
    title="the ride is measured at two stages of the work",
    grade=Grade.CONFLICT,
    basis="wording",
    needs=("smoothness.measured", "smoothness.test.when"),
    base="complete/diamond_grinding",
    quiet_after=("measured-before-texturing",),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each ride whose test names another stage than its requirement."""
    for area, ride in rides(job):
        test, stage = given(ride.test), given(ride.measured)
        when = given(test.when)
        if not any(pattern.search(when) for pattern in _OTHERS[stage]):
            continue
        says = f"Smoothness is measured {words(stage)}, and its test is done {when}."
        at = [
            evidence(ride, "measured", "stage of the work"),
            evidence(test, "when", "time of the test"),
        ]
        yield RULE.finding(area, says, at, ("one stage in both places",))
