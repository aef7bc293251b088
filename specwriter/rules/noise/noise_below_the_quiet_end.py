"""A noise limit below the quietest that the texture reaches.

Looks at
    OBSI limits at 60 mph and the texture.

Why it matters
    A limit below the quiet end of the texture fails on the first day, and nothing that the
    contractor does with the blades changes that.

Conflict
    areas.mainline.noise: {measure: OBSI, at_most: 96 dB(A), speed: 60 mph}

Settled
    areas.mainline.noise: {measure: OBSI, at_most: 102 dB(A), speed: 60 mph}

How to settle it
    Set a limit within the band of the texture, or choose a quieter texture.

Sources
    Washington State DOT WA-RD 767.1, 2011: two new next generation lanes measured 99.6 and 101.6
    memory, unverified: grinding and longitudinal grooving 99 to 105, next generation 98 to 102
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.quantity import parse
from specwriter.rules.noise._noise import NOT_COMPARABLE, noises
from specwriter.rules.places import words
from specwriter.rules.rule import Rule, evidence, given
from specwriter.trade.sound import BANDS

RULE = Rule(
    title="the texture is not known to be so quiet",
    grade=Grade.CAUTION,
    basis="practice",
    needs=("noise.measure", "noise.at_most"),
    applies_to=tuple(BANDS),
    quiet_after=NOT_COMPARABLE,
)

# a slower test is quieter; the bands hold for the standard speed
_STANDARD = parse("59 mph to 61 mph").interval


def check(job: Job) -> Iterator[Finding]:
    """One finding for each OBSI limit below the band of its texture."""
    for area, noise in noises(job):
        limit, band = given(noise.at_most), BANDS[area.texture]
        at_standard = noise.speed is None or not noise.speed.interval.meet(_STANDARD).is_empty
        if noise.measure != "OBSI" or not at_standard:
            continue
        if limit.amounts[0].value >= band.quietest:
            continue
        says = (
            f"{words(area.texture).capitalize()} gives about {band.quietest} to {band.loudest} "
            f"dB(A) (from memory, unverified), {limit} at most is asked for."
        )
        at = [evidence(noise, "at_most", "noise limit"), evidence(area, "texture", "texture")]
        settle = (
            f"a limit between {band.quietest} and {band.loudest} dB(A)",
            "measure a lane of this texture near by before the limit is set",
        )
        yield RULE.finding(area, says, at, settle)
