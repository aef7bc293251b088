"""A texture profile of longitudinal grooves that may be taken in any direction.

Looks at
    MPD and ETD on textures cut along the lane, and the direction of the profile.

Why it matters
    Along the grooves a profile reads from nothing to half too much, across them it reads what
    is there. Vehicles that measure at traffic speed take it along the lane.

Conflict
    areas.mainline.texture_depth:
      measure: MPD
      at_least: 0.8 mm
      method: ASTM E1845
      edition: "2015"

Settled
    areas.mainline.texture_depth:
      measure: MPD
      at_least: 0.8 mm
      method: ASTM E1845
      edition: "2015"
      direction: across_lane

How to settle it
    State the direction: across the lane, or a circle.

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
from specwriter.rules.standards import named_in
from specwriter.rules.texture_depth._depth import depths

RULE = Rule(
    title="the direction of the texture profile is not stated",
    grade=Grade.OPEN,
    basis="published",
    needs=("texture_depth.measure",),
    applies_to=LONGITUDINAL,
    quiet_after=(
        "method-of-another-property",
        "outflow-as-texture-depth",
        "texture-edition-missing",
        "texture-measure-and-method",
    ),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each profile on a longitudinal texture without a direction."""
    for area, depth in depths(job):
        circular = any(standard.name == "ASTM E2157" for standard, _ in named_in(depth))
        if depth.measure not in ("MPD", "ETD") or depth.direction or circular:
            continue
        says = (
            f"{depth.measure} comes from a profile; on {words(area.texture)} it depends on whether "
            "the profile runs along the grooves or across them."
        )
        at = [
            evidence(depth, "measure", "measure of texture depth"),
            evidence(area, "texture", "texture"),
        ]
        settle = ("direction: across_lane", "direction: circle")
        yield RULE.finding(area, says, at, settle)
