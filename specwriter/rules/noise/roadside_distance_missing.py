"""A roadside noise limit without the distance of the microphone.

Looks at
    Roadside limits, and the place of their test.

Why it matters
    At 50 ft a car is nearly 7 dB quieter than at 25 ft. Without the distance the limit can be
    met by moving the microphone.

Conflict
    areas.mainline.noise: {measure: roadside, at_most: 75 dB(A), test: {where: beside the lane}}

Settled
    areas.mainline.noise:
      measure: roadside
      at_most: 75 dB(A)
      test: {where: 25 ft from the centre of the lane}

How to settle it
    State the distance from the centre of the lane in the place of the test.

Sources
    NCHRP Report 630, table 9, undated: 21.9 dB below OBSI at 25 ft, 28.5 at 50 ft
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.noise._noise import NOT_COMPARABLE, noises, words_of_test
from specwriter.rules.rule import Rule, evidence
from specwriter.rules.standards import named_in

RULE = Rule(
    title="the distance of the microphone is not stated",
    grade=Grade.OPEN,
    basis="published",
    needs=("noise.measure",),
    quiet_after=NOT_COMPARABLE,
)

_DISTANCE = re.compile(r"\d(?:\.\d+)?[ -]?(?:ft|feet|foot|m|metres?|meters?)\b", re.IGNORECASE)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each roadside limit without a distance or a method that fixes it."""
    for area, noise in noises(job):
        if noise.measure != "roadside" or list(named_in(noise)):
            continue
        if _DISTANCE.search(words_of_test(noise)):
            continue
        says = "At 50 ft a car is 6.6 dB quieter than at 25 ft; the job names no distance."
        at = [evidence(noise, "measure", "measure of noise")]
        if noise.test is not None and noise.test.where:
            at.append(evidence(noise.test, "where", "place of the test"))
        settle = ("test: where: 25 ft from the centre of the lane", "name a method that fixes it")
        yield RULE.finding(area, says, at, settle)
