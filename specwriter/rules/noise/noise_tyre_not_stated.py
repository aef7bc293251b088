"""A noise limit at the tyre without the tyre.

Looks at
    OBSI limits whose test names no standard that fixes the tyre, and no tyre.

Why it matters
    The level is that of a tyre on a pavement. New tyres of one kind already differ by a decibel
    on one lane, so a limit without the tyre is met or missed by the choice of tyre.

Conflict
    areas.mainline.noise: {measure: OBSI, at_most: at most 103 dB(A)}
    areas.mainline.noise.test: {method: sound intensity probes beside the wheel}

Settled
    areas.mainline.noise: {measure: OBSI, at_most: at most 103 dB(A)}
    areas.mainline.noise.test: {method: AASHTO T 360-16}

How to settle it
    Name AASHTO T 360 with its edition, or the tyre by its standard.

Sources
    AASHTO T 360-16(2020), scope: the standard reference test tyre of ASTM F2493
    NCHRP 1-44(1) tyre study, abstract, undated: new tyres of one kind range over 1.1 dB
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.noise._noise import NOT_COMPARABLE, noises, words_of_test
from specwriter.rules.rule import Rule, evidence, given
from specwriter.rules.standards import standards_in

RULE = Rule(
    title="the tyre of the noise test is not stated",
    grade=Grade.OPEN,
    basis="published",
    needs=("noise.measure", "noise.test.method"),
    quiet_after=NOT_COMPARABLE,
)

_TYRE = re.compile(r"\bt[yi]res?\b|\bSRTT\b|F ?-?2493", re.IGNORECASE)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each OBSI test with neither a standard nor a tyre."""
    for area, noise in noises(job):
        test = given(noise.test)
        told = standards_in(test.method) or _TYRE.search(words_of_test(noise))
        if noise.measure != "OBSI" or told:
            continue
        says = f"The method is {test.method}; no tyre is named, and no standard that fixes one."
        at = [evidence(noise, "measure", "measure of noise"), evidence(test, "method", "method")]
        yield RULE.finding(area, says, at, ("method: AASHTO T 360, with its edition",))
