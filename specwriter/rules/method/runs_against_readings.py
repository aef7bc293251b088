"""The number of profile runs is stated twice, and differs.

Looks at
    The runs of a smoothness requirement, and the readings of its test.

Why it matters
    The mean of three runs is steadier than one run. Where one place says three and the other one,
    each side counts the runs that suit it.

Conflict
    areas.mainline.smoothness.runs: 1

Settled
    areas.mainline.smoothness.runs: 3

How to settle it
    Say the number once, or the same in both places.

Sources
    UFGS 02753, undated: three passes of each lane, averaged
    arithmetic: the two numbers as written
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.places import rides
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="runs and readings of the profile differ",
    grade=Grade.CONFLICT,
    basis="arithmetic",
    needs=("smoothness.runs", "smoothness.test.readings"),
    base="complete/diamond_grinding",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each ride with two numbers of runs."""
    for area, ride in rides(job):
        test = given(ride.test)
        if str(ride.runs) == str(test.readings):
            continue
        says = f"The profile is run {ride.runs} times, and its test takes {test.readings} readings."
        at = [
            evidence(ride, "runs", "runs of the profile"),
            evidence(test, "readings", "readings of the test"),
        ]
        yield RULE.finding(area, says, at, ("the same number in both places",))
