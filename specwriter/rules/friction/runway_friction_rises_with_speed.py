"""A runway friction limit that is higher at the higher speed.

Looks at
    Two friction coefficients of one runway, at two speeds, in the area and in another document.

Why it matters
    Friction on a wet surface falls with speed. Where more is asked for at 60 mph than at 40 mph,
    the two were interchanged, or the lower one can never decide.

Conflict
    areas.runway.friction: {measure: Mu, at_least: at least 0.82, speed: 60 mph}
    areas.runway.friction.test: {device: fixed slip}
    areas.runway.also_stated:
      - {in: plans, friction: {measure: Mu, at_least: at least 0.74, speed: 40 mph}}

Settled
    areas.runway.friction: {measure: Mu, at_least: at least 0.74, speed: 60 mph}
    areas.runway.friction.test: {device: fixed slip}
    areas.runway.also_stated:
      - {in: plans, friction: {measure: Mu, at_least: at least 0.82, speed: 40 mph}}

How to settle it
    Interchange the two values, or take the one that never decides out.

Sources
    FAA AC 150/5320-12C, table 3-2, 1997, as reproduced: in each class the level at 60 mph is lower
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule, evidence, given
from specwriter.trade.friction_measure import read_measure

RULE = Rule(
    title="more friction is asked for at the higher speed",
    grade=Grade.CAUTION,
    basis="published",
    needs=("friction.at_least", "friction.speed", "also_stated"),
    base="runway_grooving",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each pair of coefficients that rises with speed."""
    for area in job.areas.values():
        own = given(area.friction)
        for each in area.also_stated:
            other = each.friction
            if other is None or other.at_least is None or other.speed is None:
                continue
            kinds = {read_measure(one.measure) for one in (own, other)}
            if {kind.kind if kind else "" for kind in kinds} != {"coefficient"}:
                continue
            slow, fast = sorted((own, other), key=lambda one: given(one.speed).amounts[0].base)
            low, high = (given(one.at_least).amounts[0].base for one in (slow, fast))
            if (
                given(slow.speed).amounts[0].base == given(fast.speed).amounts[0].base
                or high <= low
            ):
                continue
            says = (
                f"{fast.at_least} is asked for at {fast.speed}, and {slow.at_least} at "
                f"{slow.speed}."
            )
            at = [
                evidence(fast, "at_least", "friction at the higher speed"),
                evidence(slow, "at_least", "friction at the lower speed"),
            ]
            yield RULE.finding(area, says, at, ("interchange the two", "take one of them out"))
