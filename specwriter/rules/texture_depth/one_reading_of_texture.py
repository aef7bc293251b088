"""A texture depth judged by fewer than four readings.

Looks at
    The number of readings in a lot of the texture depth.

Why it matters
    A single patch or circle falls on more or fewer grooves by chance. From placement alone it
    is off by 15 to 20 percent on close grooves and by 40 percent on wide ones.

Conflict
    areas.mainline.texture_depth:
      measure: MTD
      at_least: 0.8 mm
      method: ASTM E965
      edition: "2015"
      test: {readings: 1}

Settled
    areas.mainline.texture_depth:
      measure: MTD
      at_least: 0.8 mm
      method: ASTM E965
      edition: "2015"
      test: {readings: 5}

How to settle it
    Judge the mean of four readings or more at random places.

Sources
    ASTM E965; memory, unverified: at least four places on a surface
    ASTM work item WK31570, undated: two circles of different radius disagree strongly on grooves
    project calculation: placement of a circle moves its mean by 15 to 40 percent
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.places import words
from specwriter.rules.rule import Rule, evidence, given
from specwriter.rules.texture_depth._depth import depths

RULE = Rule(
    title="too few readings judge the texture",
    grade=Grade.CAUTION,
    basis="practice",
    needs=("texture_depth.test.readings",),
)

_ENOUGH = 4


def check(job: Job) -> Iterator[Finding]:
    """One finding for each texture depth with fewer than four readings a lot."""
    for area, depth in depths(job):
        test = given(depth.test)
        high = given(test.readings).interval.high
        if high is None or high >= _ENOUGH:
            continue
        says = (
            f"{test.readings} {'reading falls' if high == 1 else 'readings fall'} on more or fewer "
            f"grooves of the {words(area.texture)} by chance."
        )
        at = [evidence(test, "readings", "readings"), evidence(area, "texture", "texture")]
        settle = (f"take at least {_ENOUGH} readings at random places and judge their mean",)
        yield RULE.finding(area, says, at, settle)
