"""A unit price in another unit than the pay item.

Looks at
    The unit of each pay item, and the unit of its price.

Why it matters
    The price is multiplied by the measured quantity. $4.50 a square yard is $5.38 a square metre:
    what is paid depends on which of the two texts is read.

Conflict
    pay_items.grinding.unit: SY
    pay_items.grinding.unit_price: $4.50/m2

Settled
    pay_items.grinding.unit: SY
    pay_items.grinding.unit_price: $4.50/SY

How to settle it
    Write the price in the unit of the pay item.

Sources
    FHWA review guide on measurement and payment, 1999: measurement and payment agree
    Texas DOT PS&E manual, section 4.3, undated: their conflict is a common basis of claims
    project calculation: a square yard is 0.836127 m2
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.quantity import UNITS, show
from specwriter.rules.payment._units import pay_unit
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="the unit price is not in the unit of the pay item",
    grade=Grade.CONFLICT,
    basis="published",
    base="complete/diamond_grinding",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each price whose unit is not that of its pay item."""
    for item in job.pay_items.values():
        unit, price = pay_unit(item.unit), item.unit_price
        if unit is None or price is None or price.dimension == "money":
            continue
        if price.unit.factor * unit.factor == 1:
            continue
        says = f"{item.name} is paid by the {item.unit}, and its price is {price}."
        settle = ["change the unit of the pay item"]
        right = UNITS.get(f"$/{unit.symbol}")
        if right is not None and right.dimension == price.dimension and price.nominal is not None:
            settle.insert(0, f"unit price {show(price.nominal, right, 2)}")
        at = [
            evidence(item, "unit_price", "unit price"),
            evidence(item, "unit", "unit of the pay item"),
        ]
        yield RULE.finding(None, says, at, settle)
