"""The international friction index without the profile depth it is computed from.

Looks at
    The friction index (F60, IFI), and the texture depth of the same area.

Why it matters
    The index joins a friction number and the MPD of the same surface. Without a measurement of
    MPD it cannot be computed, whatever the friction.

Conflict
    areas.mainline.friction: {measure: F60, at_least: at least 0.3, speed: 60 km/h, tyre: smooth}

Settled
    areas.mainline.friction: {measure: F60, at_least: at least 0.3, speed: 60 km/h, tyre: smooth}
    areas.mainline.texture_depth: {measure: MPD, at_least: 0.8 mm, direction: across_lane}

How to settle it
    Ask for the MPD of the same surface, or for the friction number itself.

Sources
    ASTM E1960-07(2015), scope 1.3: the index needs MPD; the 1998 and 2003 texts also name MTD
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.friction._measure import frictions
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="the friction index lacks its profile depth",
    grade=Grade.OPEN,
    basis="published",
    needs=("friction.measure",),
    quiet_after=("friction-scale",),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each friction index without a profile depth beside it."""
    for area, friction, measure in frictions(job):
        depth = area.texture_depth
        if measure.kind != "friction index" or (depth and depth.measure in ("MPD", "ETD")):
            continue
        says = f"{friction.measure} is computed from friction and MPD, and no MPD is asked for."
        at = [evidence(friction, "measure", "friction measure")]
        if depth and depth.measure:
            at.append(evidence(depth, "measure", "measure of texture depth"))
        settle = ("texture_depth: measure: MPD", "limit the friction number itself")
        yield RULE.finding(area, says, at, settle)
