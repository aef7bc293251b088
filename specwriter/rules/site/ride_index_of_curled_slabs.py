"""A tight roughness limit on slabs that curl, without a time of day.

Looks at
    A limit of 60 in/mi or less on jointed concrete, and whether the test has a time of day.

Why it matters
    Slabs curl with the sun. A rise of 0.05 in at 15 ft joints adds about 39 in/mi to the index, so
    a lane measured in the morning can fail and pass in the afternoon without any work.

Conflict
    conditions.pavement: jointed_plain_concrete
    areas.mainline.smoothness: {index: MRI, limit: at most 55 in/mi}

Settled
    conditions.pavement: jointed_plain_concrete
    areas.mainline.smoothness:
      index: MRI
      limit: at most 55 in/mi
      test: {when: "within 3 hours of noon, at most 7 days after grinding"}

How to settle it
    Fix the hours of the profile, the same before and after.

Sources
    project calculation: IRI = 776 in/mi for each inch of curl of parabolic slabs at 15 ft joints
    CDOT-2015-07, 2015: the season of paving shows in the roughness (title and abstract)
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.places import INCH_PER_MILE, ROUGHNESS_INDEXES, rides
from specwriter.rules.rule import Rule, evidence, given

_HOURS = re.compile(r"\b(hours?|morning|noon|afternoon|night|sunrise|sunset|o'clock)\b|\d:\d\d")

RULE = Rule(
    title="the time of day is open, and the slabs curl",
    grade=Grade.NOTE,
    basis="arithmetic",
    needs=("conditions.pavement", "smoothness.index", "smoothness.limit"),
    quiet_after=("index-instrument", "index-unit"),
    by_site=True,
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each tight limit on jointed slabs that names no time of day."""
    if job.conditions.pavement not in ("jointed_plain_concrete", "jointed_reinforced_concrete"):
        return
    for area, ride in rides(job):
        limit = given(ride.limit)
        high = limit.interval.high
        if ride.index not in ROUGHNESS_INDEXES or high is None or high > 60 * INCH_PER_MILE:
            continue
        if ride.test is not None and _HOURS.search(ride.test.when or ""):
            continue
        says = f"{ride.index} {limit} is asked of jointed slabs, at any time of day."
        at = [
            evidence(ride, "limit", "smoothness limit"),
            evidence(job.conditions, "pavement", "pavement"),
        ]
        yield RULE.finding(area, says, at, ("name the hours of the profile",))
