"""A friction number whose name says another speed or tyre than its test.

Looks at
    Names such as SN40R, and the speed and tyre given beside them.

Why it matters
    SN40R is the skid number at 40 mph with the ribbed tyre. Beside another speed or tyre one of
    the two is wrong, and the limit belongs to the other.

Conflict
    areas.mainline.friction: {measure: SN40S, at_least: at least 30, speed: 60 mph}

Settled
    areas.mainline.friction: {measure: SN40S, at_least: at least 30, speed: 40 mph}

How to settle it
    Correct the name or the test, and set the limit for what is left.

Sources
    practice: SN40R is the skid number at 40 mph with the ribbed tyre, S the smooth one
    ASTM E524-08, scope: the smooth tyre has a standard of its own
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from specwriter.diagnostic import Evidence, Finding, Grade
from specwriter.model import Job
from specwriter.model.results import Friction
from specwriter.quantity import UNITS
from specwriter.rules.friction._measure import frictions
from specwriter.rules.rule import Rule, evidence
from specwriter.trade.friction_measure import Measure

RULE = Rule(
    title="the name of the friction number contradicts its test",
    grade=Grade.CONFLICT,
    basis="wording",
    needs=("friction.measure",),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each name that contradicts the speed or the tyre."""
    for area, friction, measure in frictions(job):
        parts = [*_speed(friction, measure), *_tyre(friction, measure)]
        if parts:
            says = f"{friction.measure} is a number {' and '.join(says for says, _ in parts)}."
            at = [evidence(friction, "measure", "friction measure"), *(at for _, at in parts)]
            settle = ("correct the name", "correct the test and set the limit for it")
            yield RULE.finding(area, says, at, settle)


def _speed(friction: Friction, measure: Measure) -> Iterator[tuple[str, Evidence]]:
    if measure.speed is None or friction.speed is None:
        return
    named = [UNITS[unit].to_base(Fraction(measure.speed)) for unit in ("mph", "km/h")]
    if not any(speed in friction.speed.interval for speed in named):
        says = f"at {measure.speed}, not at {friction.speed}"
        yield says, evidence(friction, "speed", "test speed")


def _tyre(friction: Friction, measure: Measure) -> Iterator[tuple[str, Evidence]]:
    if measure.tyre and friction.tyre and measure.tyre != friction.tyre:
        says = f"of the {measure.tyre} tyre, not of the {friction.tyre} one"
        yield says, evidence(friction, "tyre", "test tyre")
