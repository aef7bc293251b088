"""A noise limit without a word on the temperature of the air.

Looks at
    OBSI limits, and whether their test mentions the temperature.

Why it matters
    Tyres are quieter on a warm day. Between 40 and 80 °F the level may move by one half to one
    and a half decibels, which can decide whether a limit is met.

Conflict
    areas.mainline.noise:
      measure: OBSI
      at_most: 102 dB(A)
      speed: 60 mph
      test: {method: AASHTO T 360-16, when: 30 days after opening}

Settled
    areas.mainline.noise:
      measure: OBSI
      at_most: 102 dB(A)
      speed: 60 mph
      test: {method: AASHTO T 360-16, when: 30 days after opening at 60 to 80 °F}

How to settle it
    Name a range of air temperature, or the correction that applies.

Sources
    California OBSI temperature study, abstract, undated: -0.027 dB for each degree Celsius
    AASHTO T 360; memory, unverified: -0.072 dB for each degree Celsius
    federal report on the variability of OBSI, undated: general corrections can mislead
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.noise._noise import NOT_COMPARABLE, noises, words_of_test
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="the air temperature of the noise test is not stated",
    grade=Grade.NOTE,
    basis="published",
    needs=("noise.measure", "noise.test.when"),
    quiet_after=NOT_COMPARABLE,
)

_MENTIONS = ("temperature", "°f", "°c")


def check(job: Job) -> Iterator[Finding]:
    """One finding for each OBSI test that does not mention the temperature."""
    for area, noise in noises(job):
        said = words_of_test(noise).lower()
        if noise.measure != "OBSI" or any(each in said for each in _MENTIONS):
            continue
        says = (
            "The level falls as the air warms, by 0.027 dB for each degree Celsius in one source "
            "and by 0.072 in another; the test does not mention the temperature."
        )
        test = given(noise.test)
        at = [evidence(test, "when", "time of the test"), evidence(noise, "measure", "measure")]
        settle = ("name a range of air temperature", "name the correction that applies")
        yield RULE.finding(area, says, at, settle)
