"""A roughness index that runs across bridge joints.

Looks at
    A limit on IRI, MRI or HRI on a bridge deck, or on a road with bridges inside its limits,
    without a list of the places left out.

Why it matters
    A bridge joint is a bump that no grinding takes away. One of them can use up the whole limit
    of a segment, and the approach slabs on both sides are held by it.

Conflict
    conditions.bridges_within: true
    areas.mainline.groove.depth_on_bridges: 1/16 in
    areas.mainline.smoothness: {index: MRI, limit: at most 75 in/mi}

Settled
    conditions.bridges_within: true
    areas.mainline.smoothness: {index: MRI, limit: at most 75 in/mi, exclusions: bridge decks}

How to settle it
    Leave a stated length on each side of a bridge joint out of the index.

Sources
    Virginia special provision, June 2001, as compiled: 0.01 mi at each bridge is left out
    Maine DOT table, as compiled (undated): 150 ft around bridge joints are left out
    Iowa DOT Standard Specifications 2428, 2015: a bridge is a segment of its own
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.places import AIRFIELD, ROUGHNESS_INDEXES, rides
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="the roughness index runs across bridge joints",
    grade=Grade.CAUTION,
    basis="published",
    needs=("smoothness.index", "smoothness.limit"),
    quiet_after=("index-instrument", "index-unit", "runway-roughness-index"),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each area whose index crosses bridge joints without exclusions."""
    for area, ride in rides(job):
        if ride.index not in ROUGHNESS_INDEXES or ride.exclusions or area.place in AIRFIELD:
            continue
        at = [evidence(ride, "limit", "smoothness limit")]
        if area.place == "bridge_deck":
            at.append(evidence(area, "place", "place"))
        elif job.conditions.bridges_within:
            at.append(evidence(job.conditions, "bridges_within", "bridges within the limits"))
        else:
            continue
        says = (
            f"{ride.index} {ride.limit} is asked for across bridge joints, and no place is left "
            "out of the index."
        )
        settle = ("leave a length on each side of a bridge joint out of the index",)
        yield RULE.finding(area, says, at, settle)
