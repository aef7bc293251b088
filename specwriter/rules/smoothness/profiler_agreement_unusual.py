"""An agreement of two profilers that proves nothing, or that none reaches.

Looks at
    The least cross-correlation of the profiles of two profilers.

Why it matters
    Where contractor and agency measure different roughness, their profiles are laid over each
    other. A figure of 1 means the same profile. Below 0.85 two different lanes would agree;
    above 0.98 one profiler does not agree with itself from run to run.

Conflict
    areas.mainline.smoothness: {index: MRI, agreement: at least 0.50}

Settled
    areas.mainline.smoothness: {index: MRI, agreement: at least 0.90}

How to settle it
    Ask for 0.90, or for the figure of the agency's certification programme.

Sources
    FHWA section 401.16, as reproduced, undated: contractor and agency profiles agree to 0.90
    AASHTO R 56; memory, unverified: 0.92 for repeatability, 0.90 for accuracy
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.places import rides
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="the agreement of two profilers is unusual",
    grade=Grade.CAUTION,
    basis="published",
    needs=("smoothness.agreement",),
)

_LOW, _HIGH = Fraction("0.85"), Fraction("0.98")


def check(job: Job) -> Iterator[Finding]:
    """One finding for each area whose figure lies outside 0.85 to 0.98."""
    for area, ride in rides(job):
        asked = given(ride.agreement)
        least = asked.amounts[0].base
        if _LOW <= least <= _HIGH:
            continue
        meaning = "below 0.85 unlike profiles pass" if least < _LOW else "above 0.98 few runs agree"
        says = f"The profiles of two profilers agree to {asked}; {meaning}."
        at = [evidence(ride, "agreement", "agreement of two profilers")]
        yield RULE.finding(area, says, at, ("at least 0.90",))
