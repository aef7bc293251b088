"""A friction standard with a broken history, cited without its edition.

Looks at
    ASTM E1911 and E1960 as methods of the friction test, and the edition.

Why it matters
    E1911 was withdrawn for a time; E1960 changed the texture it takes and, in 2003, was printed
    with equations that had to be corrected. Which text holds decides what the number means.

Conflict
    areas.mainline.friction:
      measure: DFT40
      at_least: at least 0.5
      speed: 40 km/h
      test: {method: ASTM E1911}

Settled
    areas.mainline.friction:
      measure: DFT40
      at_least: at least 0.5
      speed: 40 km/h
      test: {method: ASTM E1911, edition: "2019"}

How to settle it
    State the edition.

Sources
    ASTM E1960-07(2015), section 2: lists E1911 as withdrawn 2018; later: memory, unverified
    ASTM E1960-03e1, note e1, August 2005: corrected equations
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule, evidence, given
from specwriter.rules.standards import standards_in

RULE = Rule(
    title="the edition of the friction standard is not stated",
    grade=Grade.CAUTION,
    basis="published",
    needs=("friction.test.method",),
    quiet_after=("friction-measure-and-method", "method-of-another-property"),
)

_HISTORY = {
    "ASTM E1911": "was withdrawn for a time",
    "ASTM E1960": "changed its equations and the texture it takes between editions",
}


def check(job: Job) -> Iterator[Finding]:
    """One finding for each such standard without an edition."""
    for area in job.areas.values():
        test = given(given(area.friction).test)
        for standard in standards_in(test.method):
            dated = test.edition or f"{standard.name}-" in (test.method or "")
            if standard.name not in _HISTORY or dated:
                continue
            says = f"{standard.name} {_HISTORY[standard.name]}; the job does not say which edition."
            at = [evidence(test, "method", "test method")]
            yield RULE.finding(area, says, at, ('state the edition, such as edition: "2015"',))
