"""An OBSI limit on stretches too short for one test section.

Looks at
    OBSI limits, and the length of the stretches of the area.

Why it matters
    A test section is 440 ft, five seconds at 60 mph, and the car needs its speed before and
    after it. On a shorter stretch there is nothing to measure.

Conflict
    areas.mainline.limits.0: {from: 10+00, to: 13+00, width: 24 ft}
    areas.mainline.noise: {measure: OBSI, at_most: 102 dB(A), speed: 60 mph}

Settled
    areas.mainline.limits.0: {from: 10+00, to: 20+00, width: 24 ft}
    areas.mainline.noise: {measure: OBSI, at_most: 102 dB(A), speed: 60 mph}

How to settle it
    Name a longer stretch with the same texture for the test, or leave the noise limit out.

Sources
    NCHRP Report 630, page 18, undated: sections of 440 ft, three passes
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.quantity import show
from specwriter.rules.noise._noise import NOT_COMPARABLE, noises
from specwriter.rules.places import stretch_length
from specwriter.rules.rule import Rule, evidence, given
from specwriter.trade.sound import SECTION_FT

RULE = Rule(
    title="no stretch is long enough for an OBSI test",
    grade=Grade.CAUTION,
    basis="published",
    needs=("noise.measure", "limits"),
    quiet_after=(*NOT_COMPARABLE, "noise-on-deck-or-ramp"),
)

_SECTION = SECTION_FT * Fraction("0.3048")


def check(job: Job) -> Iterator[Finding]:
    """One finding for each area whose longest stretch is shorter than a test section."""
    for area, noise in noises(job):
        lengths = [stretch_length(each) for each in area.limits]
        if noise.measure != "OBSI" or None in lengths:
            continue
        longest = max(each for each in lengths if each is not None)
        if longest >= _SECTION:
            continue
        unit = given(area.limits[0].start).amounts[0].unit
        says = (
            f"The longest stretch is {show(longest, unit)}; a test section is {SECTION_FT} ft, "
            "with a run-up at full speed before it."
        )
        at = [evidence(noise, "measure", "measure of noise")]
        at += [evidence(each, "start", "start of the stretch") for each in area.limits]
        settle = ("name a longer stretch of the same texture for the test", "leave the limit out")
        yield RULE.finding(area, says, at, settle)
