"""A friction limit on the wrong scale: a skid number below one, a coefficient above one.

Looks at
    The friction measure and its limit.

Why it matters
    A skid number is a hundred times the coefficient. 0.40 read as a skid number asks for
    nothing, and 40 read as a coefficient cannot exist.

Conflict
    areas.mainline.friction:
      measure: SN
      at_least: at least 0.40
      speed: 40 mph
      tyre: smooth

Settled
    areas.mainline.friction:
      measure: SN
      at_least: at least 40
      speed: 40 mph
      tyre: smooth

How to settle it
    Give the limit on the scale of the measure.

Sources
    university pavement textbook, 2nd edition, problem 9.4, undated: a skid number of 40 at 40 mph
    FAA AC 150/5320-12C, table 3-2, 1997, as reproduced: coefficients from 0.34 to 0.82
    ASTM E274-97; the factor of 100 from memory, unverified
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.friction._measure import frictions
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="the friction limit does not fit its measure",
    grade=Grade.CONFLICT,
    basis="published",
    needs=("friction.measure", "friction.at_least"),
    quiet_after=("locked-wheel-on-runway",),
)

_HIGHEST = Fraction("1.2")
_OF_HUNDRED = ("skid number", "pendulum number")


def check(job: Job) -> Iterator[Finding]:
    """One finding for each limit on the scale of another measure."""
    for area, friction, measure in frictions(job):
        amount = given(friction.at_least).amounts[0]
        if measure.kind in _OF_HUNDRED and 0 < amount.value <= 1:
            says = f"A {measure.kind} runs to about 100; {amount.text} is a coefficient."
            settle = (f"write {_plain(amount.value * 100)}", "make the measure a coefficient")
        elif measure.kind not in _OF_HUNDRED and amount.value > _HIGHEST:
            says = f"A {measure.kind} does not exceed about 1; {amount.text} is a skid number."
            settle = (f"write {_plain(amount.value / 100)}", "make the measure SN, with its tyre")
        else:
            continue
        at = [
            evidence(friction, "at_least", "friction limit"),
            evidence(friction, "measure", "friction measure"),
        ]
        yield RULE.finding(area, says, at, settle)


def _plain(value: Fraction) -> str:
    return f"{float(value):g}"
