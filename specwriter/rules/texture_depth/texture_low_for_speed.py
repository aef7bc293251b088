"""A texture depth that is low for fast roads.

Looks at
    The texture depth that is asked for, where the posted speed is 50 mph or more.

Why it matters
    At speed the water must find a way out under the tyre within a hundredth of a second. What the
    texture does not take, the tyre rides on.

Conflict
    conditions.posted_speed: 65 mph
    areas.mainline.texture_depth: {measure: MTD, at_least: at least 0.4 mm}

Settled
    conditions.posted_speed: 35 mph
    areas.mainline.texture_depth: {measure: MTD, at_least: at least 0.4 mm}

How to settle it
    Ask for 0.8 mm or more on the average, or give the agency's own level.

Sources
    UK Specification for the Reinstatement of Openings in Highways, table S2.5, undated: 0.6 mm
    FHWA T 5040.36, 2005: 50 mph and above are fast; 0.8 mm: memory, unverified
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.quantity import UNITS
from specwriter.rules.places import AIRFIELD
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="the texture depth is low for the speed",
    grade=Grade.NOTE,
    basis="practice",
    needs=("texture_depth.at_least", "conditions.posted_speed"),
    by_site=True,
)

_FAST, _LEAST = 50, Fraction(6, 10000)
"""mph from which a road is fast (FHWA T 5040.36, 2005), and the lowest published limit in m."""


def check(job: Job) -> Iterator[Finding]:
    """One finding for each area of a fast road with less than the lowest published limit."""
    speed = given(job.conditions.posted_speed)
    if speed.amounts[0].base < _FAST * UNITS["mph"].factor:
        return
    for area in job.areas.values():
        depth = given(area.texture_depth)
        asked = given(depth.at_least)
        low = asked.amounts[0].base < _LEAST
        if area.place in AIRFIELD or depth.surface == "between_grooves" or not low:
            continue
        says = f"{asked} is asked for where {speed} is posted."
        at = [
            evidence(depth, "at_least", "texture depth"),
            evidence(job.conditions, "posted_speed", "posted speed"),
        ]
        yield RULE.finding(area, says, at, ("at least 0.8 mm", "the agency's own level"))
