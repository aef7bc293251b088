"""A noise level that the named method does not measure.

Looks at
    The measure of noise and the documents named as its method.

Why it matters
    OBSI, close proximity and pass-by levels of one pavement differ by 2 to 30 dB. A limit of
    one tested as another is met or missed by the choice of method.

Conflict
    areas.mainline.noise:
      measure: OBSI
      at_most: 102 dB(A)
      speed: 60 mph
      test: {method: ISO 11819-2, when: in dry air of recorded temperature}

Settled
    areas.mainline.noise:
      measure: OBSI
      at_most: 102 dB(A)
      speed: 60 mph
      test: {method: AASHTO T 360, when: in dry air of recorded temperature}

How to settle it
    Name the method of the measure, or set a limit for what the method measures.

Sources
    AASHTO T 360-16(2020), scope: OBSI; the roadside methods are documents of their own
    NCHRP Report 630, page 9, undated: OBSI is about 2 dB above close proximity
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.noise._noise import noises
from specwriter.rules.rule import Rule, evidence
from specwriter.rules.standards import named_in

RULE = Rule(
    title="the method does not measure this noise",
    grade=Grade.CONFLICT,
    basis="published",
    needs=("noise.measure", "noise.test.method"),
    quiet_after=("method-of-another-property",),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each measure that none of the named methods gives."""
    for area, noise in noises(job):
        named = [each for each in named_in(noise) if each[0].of == "noise"]
        if not named or any(noise.measure in standard.gives for standard, _ in named):
            continue
        standard, place = named[0]
        says = (
            f"{standard.name} ({standard.title}) measures {standard.gives[0]}, not {noise.measure}."
        )
        at = [place, evidence(noise, "measure", "measure of noise")]
        wanted = "AASHTO T 360" if noise.measure == "OBSI" else "AASHTO TP 98 or ISO 11819-1"
        settle = (f"method: {wanted}", f"set a limit for {standard.gives[0]} levels")
        yield RULE.finding(area, says, at, settle)
