"""Places left out of the profile, and a straightedge that is only laid across the lane.

Looks at
    The places that are left out of the profile, and the direction of the straightedge.

Why it matters
    Lane ends, joints of bridges and manhole frames are left out because a profiler cannot judge
    them. A straightedge that is laid across the lane only finds no bump there, so the roughest
    places of the job have no requirement on ride at all.

Conflict
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.limit: at most 75 in/mi
    areas.mainline.smoothness.exclusions: the first and last 25 ft of each limit
    areas.mainline.straightedge:
      length: 10 ft
      tolerance: at most 1/4 in
      direction: transverse
      kind: resting

Settled
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.limit: at most 75 in/mi
    areas.mainline.smoothness.exclusions: the first and last 25 ft of each limit
    areas.mainline.straightedge:
      length: 10 ft
      tolerance: at most 1/8 in
      direction: longitudinal
      kind: resting

How to settle it
    Lay the straightedge along the lane in those places.

Sources
    Iowa DOT Standard Specifications, section 2317, April 2009: 1/8 in in 10 ft on excluded places
    Virginia DOT special provision, June 2001, second-hand: 1/4 in under 10 ft outside the profile
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.places import ROUGHNESS_INDEXES, rides
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="places left out of the profile have no test",
    grade=Grade.CAUTION,
    basis="published",
    needs=("smoothness.index", "smoothness.exclusions", "straightedge.direction"),
    quiet_after=("index-instrument", "runway-roughness-index"),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each profile with exclusions and no straightedge along the lane."""
    for area, ride in rides(job):
        edge = given(area.straightedge)
        nothing = given(ride.exclusions).strip().lower() in ("none", "no", "nothing")
        if edge.direction != "transverse" or nothing or ride.index not in ROUGHNESS_INDEXES:
            continue
        says = (
            f"The {ride.index} does not cover {ride.exclusions}, and the straightedge is laid "
            "across the lane only."
        )
        at = [
            evidence(ride, "exclusions", "places left out"),
            evidence(edge, "direction", "direction of the straightedge"),
        ]
        settle = ("direction: both", "leave nothing out of the profile")
        yield RULE.finding(area, says, at, settle)
