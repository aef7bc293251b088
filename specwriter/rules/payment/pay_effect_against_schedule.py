"""A ride test that changes no pay, beside a pay table, or the other way round.

Looks at
    The effect on pay of the smoothness test, and the pay schedule for smoothness.

Why it matters
    One text says that a rough segment costs nothing, the other takes money for it. The contractor
    quotes the first, the agency the second.

Conflict
    areas.mainline.smoothness.pay_adjustment:
      schedule: table
      bands:
        - {index: at most 60.0 in/mi, pay: $200}
        - {index: 60.1 in/mi to 75.0 in/mi, pay: $0}
      cap: $8,000
      after_correction: no_bonus
      applies_to: each segment of 0.1 mi in each lane
    areas.mainline.smoothness.test.pay_effect: none

Settled
    areas.mainline.smoothness.pay_adjustment:
      schedule: table
      bands:
        - {index: at most 60.0 in/mi, pay: $200}
        - {index: 60.1 in/mi to 75.0 in/mi, pay: $0}
      cap: $8,000
      after_correction: no_bonus
      applies_to: each segment of 0.1 mi in each lane
    areas.mainline.smoothness.test.pay_effect: by the pay schedule for smoothness

How to settle it
    Let the effect on pay point to the schedule, or say that there is no schedule.

Sources
    FHWA review guide on measurement and payment, 1999: measurement and payment agree
    FHWA review guide on pavement smoothness, 1999: what the result does to pay
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.places import rides
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="the ride test and the pay schedule disagree on pay",
    grade=Grade.CONFLICT,
    basis="published",
    needs=("smoothness.test.pay_effect", "smoothness.pay_adjustment.schedule"),
    base="complete/diamond_grinding",
)

_MONEY = re.compile(r"percent|%|\$|reduc|deduct|bonus|incentive|penalt", re.IGNORECASE)
_NONE = re.compile(r"none|no effect|no adjustment", re.IGNORECASE)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each ride whose test and schedule say different things of pay."""
    for area, ride in rides(job):
        test, pay = given(ride.test), given(ride.pay_adjustment)
        effect = given(test.pay_effect)
        free = bool(_NONE.fullmatch(effect.strip().rstrip(".")))
        if pay.schedule == "table" and free:
            says = "The test has no effect on pay, and a table adjusts pay by its result."
        elif pay.schedule == "none" and not free and _MONEY.search(effect):
            says = f"There is no pay schedule, and the test has this effect on pay: {effect}."
        else:
            continue
        at = [
            evidence(test, "pay_effect", "effect on pay of the ride test"),
            evidence(pay, "schedule", "pay schedule"),
        ]
        settle = ("let the effect on pay point to the schedule", "correct the schedule")
        yield RULE.finding(area, says, at, settle)
