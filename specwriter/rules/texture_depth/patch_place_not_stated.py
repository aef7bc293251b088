"""A sand patch on grooves without a word on whether they are part of it.

Looks at
    MTD on grooved textures, and the surface on which it is measured.

Why it matters
    Over grooves the patch measures mostly their volume, between them the texture of the land.
    The two differ by a factor of two or three, and both are called texture depth.

Conflict
    areas.mainline.texture_depth:
      measure: MTD
      at_least: 0.5 mm
      method: ASTM E965
      edition: "2015"

Settled
    areas.mainline.texture_depth:
      measure: MTD
      at_least: 0.5 mm
      method: ASTM E965
      edition: "2015"
      surface: over_grooves

How to settle it
    State surface: over_grooves or between_grooves, and set the limit for it.

Sources
    project calculation: grooves 0.095 in x 1/8 in every 3/4 in alone make 0.40 mm, lands 0.3 mm
    FAA AC 150/5320-12C, ch. 3, 1997; memory, unverified: grooved runways are measured off grooves
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.places import words
from specwriter.rules.rule import Rule, evidence
from specwriter.rules.texture_depth._depth import GROOVED, depths

RULE = Rule(
    title="whether grooves belong to the patch is not stated",
    grade=Grade.OPEN,
    basis="practice",
    needs=("texture_depth.measure",),
    applies_to=GROOVED,
    base="longitudinal_grooving",
    quiet_after=(
        "method-of-another-property",
        "outflow-as-texture-depth",
        "texture-measure-and-method",
    ),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each patch on a grooved texture without its surface."""
    for area, depth in depths(job):
        if depth.measure != "MTD" or depth.surface or depth.land_texture:
            continue
        says = (
            f"On {words(area.texture)} a patch over the grooves measures their volume, one between "
            "them the texture of the land; the job does not say which is meant."
        )
        at = [
            evidence(depth, "measure", "measure of texture depth"),
            evidence(area, "texture", "texture"),
        ]
        yield RULE.finding(area, says, at, ("surface: over_grooves", "surface: between_grooves"))
