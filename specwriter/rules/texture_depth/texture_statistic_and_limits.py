"""A statistic of the texture test that leaves one of the limits without use.

Looks at
    The limits for the mean and for a single reading, and the statistic of the test.

Why it matters
    Where only the mean is judged, the limit for a single reading is never applied, and a
    smooth spot that would fail it is accepted with the lot.

Conflict
    areas.mainline.texture_depth:
      measure: MTD
      at_least: 0.8 mm
      single_at_least: 0.5 mm
      method: ASTM E965
      edition: "2015"
      test: {statistic: mean}

Settled
    areas.mainline.texture_depth:
      measure: MTD
      at_least: 0.8 mm
      single_at_least: 0.5 mm
      method: ASTM E965
      edition: "2015"
      test: {statistic: mean_and_each}

How to settle it
    Judge the mean and each reading, or take the limit out that is not judged.

Sources
    UK Specification for the Reinstatement of Openings in Highways, table S2.5, undated: both limits
    common practice, no source: a limit is applied by the statistic that the test names
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule, evidence, given
from specwriter.rules.texture_depth._depth import depths

RULE = Rule(
    title="the statistic and the limits of the texture depth do not match",
    grade=Grade.OPEN,
    basis="wording",
    needs=("texture_depth.test.statistic",),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each statistic that leaves a limit unused or asks for one not given."""
    for area, depth in depths(job):
        test = given(depth.test)
        statistic = evidence(test, "statistic", "statistic")
        if test.statistic == "mean" and depth.single_at_least:
            says = (
                f"Only the mean is judged, so that no single reading may fall below "
                f"{depth.single_at_least} is never applied."
            )
            at = [evidence(depth, "single_at_least", "single reading"), statistic]
            settle = ("statistic: mean_and_each", "take the limit for a single reading out")
            yield RULE.finding(area, says, at, settle)
        elif test.statistic == "mean_and_each" and depth.at_least and not depth.single_at_least:
            says = (
                f"The mean and each reading are judged, and {depth.at_least} is the only limit: "
                "held by each reading it makes the mean idle."
            )
            at = [statistic, evidence(depth, "at_least", "texture depth")]
            settle = ("give single_at_least, a lower limit for one reading", "statistic: mean")
            yield RULE.finding(area, says, at, settle)
