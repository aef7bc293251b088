"""A ground surface accepted on a profile taken before it was ground.

Looks at
    When the smoothness of a ground surface is measured.

Why it matters
    The limit is a result of grinding. A profile taken before shows the old surface, so the
    work would be accepted or refused for something the contractor did not make.

Conflict
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.limit: at most 75 in/mi
    areas.mainline.smoothness.measured: before_texturing

Settled
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.limit: at most 75 in/mi
    areas.mainline.smoothness.measured: after_grinding

How to settle it
    Measure after grinding. A control profile taken before belongs to an improvement in percent.

Sources
    common practice, no source: a result is measured on the finished work
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.places import GROOVING, rides, words
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="the ride is measured before the surface is ground",
    grade=Grade.CONFLICT,
    basis="practice",
    needs=("smoothness.limit", "smoothness.measured"),
    quiet_after=("index-instrument",),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each ground area whose limit is judged on a profile taken before."""
    for area, ride in rides(job):
        if area.texture in GROOVING or ride.measured != "before_texturing":
            continue
        says = (
            f"{ride.limit} is to be the result of {words(area.texture)}, but the profile is "
            "taken before that work."
        )
        at = [
            evidence(ride, "measured", "time of the test"),
            evidence(ride, "limit", "smoothness limit"),
        ]
        settle = ("measured: after_grinding or after_texturing",)
        yield RULE.finding(area, says, at, settle)
