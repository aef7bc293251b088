"""A friction number that the named method does not give.

Looks at
    The friction measure and the documents named as its method.

Why it matters
    A locked wheel, a pendulum and a spinning disc meet the surface at different speeds and with
    different rubbers. Their numbers are not exchanged for one another by any fixed factor.

Conflict
    areas.mainline.friction:
      measure: SN
      at_least: at least 40
      speed: 40 mph
      tyre: smooth
      test: {method: ASTM E1911, edition: "2019"}

Settled
    areas.mainline.friction:
      measure: SN
      at_least: at least 40
      speed: 40 mph
      tyre: smooth
      test: {method: ASTM E274}

How to settle it
    Name the method of the measure, or the measure of the method with a limit set for it.

Sources
    ASTM E274-97, scope: results of the locked wheel need not correlate with those of other methods
    ASTM E1960-07(2015), scope: an index that is computed from friction and profile depth
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.friction._measure import frictions
from specwriter.rules.rule import Rule, evidence
from specwriter.rules.standards import named_in

RULE = Rule(
    title="the method does not give this friction number",
    grade=Grade.CONFLICT,
    basis="published",
    needs=("friction.measure", "friction.test.method"),
    quiet_after=("method-of-another-property",),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each measure that none of the named methods gives."""
    for area, friction, measure in frictions(job):
        named = [each for each in named_in(friction) if each[0].of == "friction"]
        if not named or any(measure.kind in standard.gives for standard, _ in named):
            continue
        standard, place = named[0]
        says = (
            f"{standard.name} ({standard.title}) gives a {standard.gives[0]}; "
            f"{friction.measure} is a {measure.kind}."
        )
        at = [place, evidence(friction, "measure", "friction measure")]
        settle = (
            f"name the method of the {measure.kind}",
            f"make the measure a {standard.gives[0]} and set its limit anew",
        )
        yield RULE.finding(area, says, at, settle)
