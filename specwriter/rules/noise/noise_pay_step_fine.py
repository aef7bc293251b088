"""A noise result that costs money in steps finer than the test.

Looks at
    The effect on pay of the noise test, where it counts in steps of less than 1 dB.

Why it matters
    Two standard tyres read one lane a decibel apart, and one tyre on two days 0.7 dB. A step of
    half a decibel is decided by the tyre, and paid by the contractor.

Conflict
    areas.mainline.noise.measure: OBSI
    areas.mainline.noise.test.pay_effect: deduct 1 percent for each 0.5 dB above the limit

Settled
    areas.mainline.noise.measure: OBSI
    areas.mainline.noise.test.pay_effect: deduct 2 percent for each 1 dB above the limit

How to settle it
    Count in steps of 1 dB or more.

Sources
    NCHRP 1-44(1) tyre study, abstract, undated: new tyres range over 1.1 dB, one tyre over 0.7
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.noise._noise import noises
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="noise is paid in steps finer than its test",
    grade=Grade.CAUTION,
    basis="published",
    needs=("noise.test.pay_effect",),
)

_STEP = re.compile(r"\b(?:each|every|per)\s+(\d+(?:\.\d+)?)\s*(?:dB|decibel)", re.IGNORECASE)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each noise test whose pay steps are smaller than a decibel."""
    for area, noise in noises(job):
        test = given(noise.test)
        step = _STEP.search(given(test.pay_effect))
        if step is None or float(step[1]) >= 1:
            continue
        says = f"Pay counts in steps of {step[1]} dB; two tyres differ by about 1 dB."
        at = [evidence(test, "pay_effect", "effect on pay")]
        yield RULE.finding(area, says, at, ("steps of 1 dB or more",))
