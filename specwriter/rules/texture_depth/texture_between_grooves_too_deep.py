"""A texture depth asked of the land that only grooves can give.

Looks at
    The texture depth measured between the grooves.

Why it matters
    The land keeps the texture that was cast or ground into it. A limit above what a broom or a
    drag leaves cannot be met there by sawing grooves.

Conflict
    areas.mainline.texture_depth:
      measure: MTD
      at_least: 1.5 mm
      method: ASTM E965
      edition: "2015"
      surface: between_grooves

Settled
    areas.mainline.texture_depth:
      measure: MTD
      at_least: 0.6 mm
      method: ASTM E965
      edition: "2015"
      surface: between_grooves

How to settle it
    Measure over the grooves, or set a limit that the land can have.

Sources
    UK Specification for the Reinstatement of Openings in Highways, table S2.5, undated: up to 1.25
    memory, unverified: turf or broom finish 0.4 to 1.0 mm, burlap drag 0.3 to 0.5 mm
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule, evidence, given
from specwriter.rules.texture_depth._depth import GROOVED, depths

RULE = Rule(
    title="the land cannot have this texture depth",
    grade=Grade.CAUTION,
    basis="practice",
    needs=("texture_depth.at_least", "texture_depth.surface"),
    applies_to=GROOVED,
    base="longitudinal_grooving",
)

_DEEPEST_LAND = Fraction("0.0013")


def check(job: Job) -> Iterator[Finding]:
    """One finding for each limit between grooves above 1.3 mm."""
    for area, depth in depths(job):
        limit = given(depth.at_least)
        if depth.surface != "between_grooves" or (limit.interval.low or 0) <= _DEEPEST_LAND:
            continue
        says = (
            f"Between the grooves the surface has the texture of the land, rarely above 1.3 mm; "
            f"{limit} is asked for."
        )
        at = [
            evidence(depth, "at_least", "texture depth"),
            evidence(depth, "surface", "surface of the texture depth"),
        ]
        settle = ("surface: over_grooves, if the grooves were to count", "a limit below 1.3 mm")
        yield RULE.finding(area, says, at, settle)
