"""A straightedge and a roughness index over the same length, and nothing on which governs.

Looks at
    A straightedge laid along the lane and a roughness limit in one area, and the places that
    are left out of the profile.

Why it matters
    The two answer to different waves. A segment that passes one can fail the other, and the
    contractor is told to grind a lane that has earned its bonus.

Conflict
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.limit: at most 75 in/mi
    areas.mainline.straightedge:
      length: 10 ft
      tolerance: at most 1/8 in
      direction: longitudinal
      kind: resting

Settled
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.limit: at most 75 in/mi
    areas.mainline.smoothness.exclusions: bridges and the first 50 ft of each limit
    areas.mainline.straightedge:
      length: 10 ft
      tolerance: at most 1/8 in
      direction: longitudinal
      kind: resting

How to settle it
    Say where each holds: the index in segments, the straightedge in the places left out of them.

Sources
    Iowa DOT Standard Specifications, section 2317, April 2009: straightedge on excluded places
    project calculation: 1/8 in under 10 ft allows a regular wave of 140 in/mi or more
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.places import ROUGHNESS_INDEXES, rides
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="which of straightedge and index governs is not stated",
    grade=Grade.CAUTION,
    basis="practice",
    needs=("smoothness.index", "smoothness.limit", "straightedge.tolerance"),
    quiet_after=(
        "grooving-does-not-improve-ride",
        "index-instrument",
        "index-unit",
        "runway-roughness-index",
    ),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each area where both are asked over the same length."""
    for area, ride in rides(job):
        edge = given(area.straightedge)
        along = edge.direction in ("longitudinal", "both")
        if not along or ride.exclusions or ride.index not in ROUGHNESS_INDEXES:
            continue
        says = (
            f"{edge.tolerance} under the straightedge and a {ride.index} of {ride.limit} both hold "
            "everywhere; neither implies the other, and no place is left to one of them."
        )
        at = [
            evidence(edge, "tolerance", "gap under the straightedge"),
            evidence(ride, "limit", "smoothness limit"),
        ]
        settle = (
            "state the places left out of the profile (exclusions), and test those by straightedge",
            "take one of the two requirements out",
        )
        yield RULE.finding(area, says, at, settle)
