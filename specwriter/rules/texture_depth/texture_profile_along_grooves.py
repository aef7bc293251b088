"""A texture profile taken along the grooves it is to measure.

Looks at
    The direction of the texture profile on textures cut along the lane.

Why it matters
    A line that runs along a groove stays in it or on the land beside it. It reads almost
    nothing, or, where it crosses at a slight angle, anything up to half more than is there.

Conflict
    areas.mainline.texture_depth:
      measure: MPD
      at_least: 0.8 mm
      method: ASTM E1845
      edition: "2015"
      direction: along_lane

Settled
    areas.mainline.texture_depth:
      measure: MPD
      at_least: 0.8 mm
      method: ASTM E1845
      edition: "2015"
      direction: across_lane

How to settle it
    Take the profile across the grooves, or on a circle with all its arcs averaged.

Sources
    ASTM E1845-15, scope: the practice itself warns of grooved surfaces
    project calculation: grooves 3.2 mm x 4 mm every 12.7 mm read 0.0 to 1.5 mm along, 1.05 across
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.places import LONGITUDINAL, words
from specwriter.rules.rule import Rule, evidence
from specwriter.rules.texture_depth._depth import depths

RULE = Rule(
    title="the texture profile runs along the grooves",
    grade=Grade.CONFLICT,
    basis="published",
    needs=("texture_depth.direction",),
    applies_to=LONGITUDINAL,
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each longitudinal texture that is profiled along the lane."""
    for area, depth in depths(job):
        if depth.direction != "along_lane":
            continue
        says = (
            f"The grooves of {words(area.texture)} run along the lane, and so does the profile: "
            "it reads a groove or a land, not the texture."
        )
        at = [
            evidence(depth, "direction", "direction of the texture profile"),
            evidence(area, "texture", "texture"),
        ]
        settle = ("direction: across_lane", "direction: circle, by ASTM E2157, mean of all arcs")
        yield RULE.finding(area, says, at, settle)
