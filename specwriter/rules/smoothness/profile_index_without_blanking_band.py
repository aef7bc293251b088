"""A profile index without its blanking band.

Looks at
    Areas whose smoothness index is PI.

Why it matters
    The same trace gives very different indexes with a band of 0.2 in, 0.1 in and none.
    Without the band the figure of the limit says nothing.

Conflict
    areas.mainline.smoothness.index: PI
    areas.mainline.smoothness.limit: at most 7 in/mi
    areas.mainline.smoothness.instrument: profilograph

Settled
    areas.mainline.smoothness.index: PI
    areas.mainline.smoothness.limit: at most 7 in/mi
    areas.mainline.smoothness.instrument: profilograph
    areas.mainline.smoothness.blanking_band: 0.2 in

How to settle it
    State the blanking band: 0.2 in, 0.1 in or 0.0 in, as the limit was set for.

Sources
    UFGS 02753: the index is taken with a 0.2 in band
    Florida DOT Standard Specifications, section 400-15.2.5.5: the limit names its 0.2 in band
    Iowa DOT Standard Specifications, section 2316, April 2020: limits for other bands exist
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.places import rides
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="a profile index without its blanking band",
    grade=Grade.CONFLICT,
    basis="published",
    needs=("smoothness.index",),
    quiet_after=("index-instrument", "index-unit"),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each area that limits a PI and does not say with which band."""
    for area, ride in rides(job):
        if ride.index != "PI" or ride.blanking_band is not None:
            continue
        at = [evidence(ride, "index", "smoothness index")]
        limit = "the PI"
        if ride.limit is not None:
            at.append(evidence(ride, "limit", "smoothness limit"))
            limit = f"a PI of {ride.limit}"
        says = f"Without a blanking band {limit} can mean a smooth surface or a rough one."
        settle = ("state the blanking band, such as 0.2 in or 0.0 in",)
        yield RULE.finding(area, says, at, settle)
