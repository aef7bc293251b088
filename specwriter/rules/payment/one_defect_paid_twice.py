"""One defect that two tests take money for.

Looks at
    Effects on pay of the straightedge beside those of the ride index, of the groove depth beside
    those of the texture depth, and of the ride test beside the rows of its own pay table.

Why it matters
    A rough lane fails the index and the straightedge, a shallow groove fails the depth and the
    texture depth. Two deductions for one defect are disputed as a penalty.

Conflict
    areas.mainline.smoothness: {index: MRI, test: {pay_effect: 95 percent of the unit price}}
    areas.mainline.straightedge: {length: 10 ft, test: {pay_effect: 90 percent of the unit price}}

Settled
    areas.mainline.smoothness: {index: MRI, test: {pay_effect: 95 percent of the unit price}}
    areas.mainline.straightedge: {length: 10 ft, test: {pay_effect: none}}

How to settle it
    Let one of the two tests change the pay, or say that the larger deduction alone applies.

Sources
    common practice, no source: one defect is deducted for once
    FHWA review guide on measurement and payment, 1999: measurement and payment agree
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from specwriter.diagnostic import Evidence, Finding, Grade
from specwriter.model import Area, Job
from specwriter.model.results import Test
from specwriter.rules.completeness._properties import read
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="one defect is deducted for twice",
    grade=Grade.CAUTION,
    basis="practice",
)

_PAIRS = (
    ("smoothness.test", "straightedge.test", "rough lane"),
    ("testing.groove_depth", "texture_depth.test", "shallow groove"),
)
_NOTHING = re.compile(
    r"\b(?:none|no (?:effect|adjustment|deduction))\b|larger|greater|not (?:paid|adj)", re.I
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each pair of tests that both take money for one defect."""
    for area in job.areas.values():
        for one, other, defect in _PAIRS:
            effects = [*_effect(area, one), *_effect(area, other)]
            if len(effects) < 2:
                continue
            says = f"Two tests deduct for a {defect}: {effects[0].written}, {effects[1].written}."
            settle = (
                "let one of the tests change the pay",
                "say that the larger deduction applies",
            )
            yield RULE.finding(area, says, effects, settle)
        yield from _beside_the_table(area)


def _beside_the_table(area: Area) -> Iterator[Finding]:
    """A sum of its own for a rough segment, where the rows of the pay table have one already."""
    ride = area.smoothness
    pay = ride.pay_adjustment if ride else None
    for effect in _effect(area, "smoothness.test"):
        if pay and pay.bands and _SUM.search(effect.written):
            rows = evidence(pay, "schedule", "pay schedule") if pay.schedule else None
            says = f"The rows of the pay table adjust the pay, and so does this: {effect.written}."
            settle = ("point to the pay schedule alone", "put the sum into a row of the table")
            yield RULE.finding(area, says, [effect, *([rows] if rows else [])], settle)


_SUM = re.compile(r"\d+(?:\.\d+)? ?(?:%|percent\b)|\$ ?\d", re.I)
"""A share or a sum of money."""


def _effect(area: Area, key: str) -> Iterator[Evidence]:
    test = read(area, key)
    if isinstance(test, Test) and test.pay_effect and not _NOTHING.search(test.pay_effect):
        yield evidence(test, "pay_effect", "effect on pay")
