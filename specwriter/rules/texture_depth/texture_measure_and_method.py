"""A measure of texture depth that the named method does not give.

Looks at
    The measure of texture depth (MTD, MPD, ETD) and the documents named as its method.

Why it matters
    A patch of sand gives MTD, a profile gives MPD. The numbers differ on the same surface, so
    a limit on one measured as the other is met or missed by the choice of method alone.

Conflict
    areas.mainline.texture_depth:
      measure: MTD
      at_least: 0.8 mm
      method: ASTM E1845
      edition: "2015"
      direction: across_lane

Settled
    areas.mainline.texture_depth:
      measure: MTD
      at_least: 0.8 mm
      method: ASTM E965
      edition: "2015"

How to settle it
    Name the method of the measure, or the measure of the method with a limit set for it.

Sources
    ASTM E965-15, scope: a volumetric method that is not expected to match other methods
    ASTM E1845-15, scope: mean profile depth from a measured profile
    ISO 13473-1:2019: mean profile depth, and the estimated texture depth computed from it
    ASTM E2157, scope, undated: the circular track meter, with its own equation for texture depth
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule, evidence
from specwriter.rules.standards import named_in
from specwriter.rules.texture_depth._depth import depths

RULE = Rule(
    title="the method does not give this measure of texture depth",
    grade=Grade.CONFLICT,
    basis="published",
    needs=("texture_depth.measure", "texture_depth.method"),
    quiet_after=("method-of-another-property", "outflow-as-texture-depth"),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each measure that none of the named methods gives."""
    for area, depth in depths(job):
        named = [each for each in named_in(depth) if each[0].of == "texture_depth"]
        if not named or any(depth.measure in standard.gives for standard, _ in named):
            continue
        standard, place = named[0]
        gives = " and ".join(standard.gives)
        says = f"{standard.name} ({standard.title}) gives {gives}, not {depth.measure}."
        at = [place, evidence(depth, "measure", "measure of texture depth")]
        wanted = "ASTM E965" if depth.measure == "MTD" else "ASTM E1845 or ISO 13473-1"
        settle = (
            f"measure {depth.measure} by {wanted}",
            f"make the measure {standard.gives[0]} and set its limit anew",
        )
        yield RULE.finding(area, says, at, settle)
