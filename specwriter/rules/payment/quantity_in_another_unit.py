"""A quantity in another unit than the pay item.

Looks at
    The unit of each pay item, and the unit in which its quantity is written.

Why it matters
    The quantity of the bid schedule is multiplied by the unit price. 28,160 m2 under an item paid
    by the square yard is 16 percent less work than was bid, or 20 percent more.

Conflict
    pay_items.grinding.unit: SY
    pay_items.grinding.quantity: 14,080 m2

Settled
    pay_items.grinding.unit: SY
    pay_items.grinding.quantity: 14,080 SY

How to settle it
    Write the quantity in the unit of the pay item.

Sources
    FHWA review guide on measurement and payment, 1999: measurement and payment agree
    Texas DOT PS&E manual, section 4.3, undated: their conflict is a common basis of claims
    project calculation: a square yard is 0.836127 m2
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.quantity import DIMENSIONS, show
from specwriter.rules.payment._units import pay_unit
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="the quantity is not in the unit of the pay item",
    grade=Grade.CONFLICT,
    basis="published",
    quiet_after=("pay-unit-against-measurement",),
    base="complete/diamond_grinding",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each quantity whose unit is not that of its pay item."""
    for item in job.pay_items.values():
        unit, quantity = pay_unit(item.unit), item.quantity
        if unit is None or quantity is None or quantity.dimension not in DIMENSIONS:
            continue
        if quantity.dimension == "number" or quantity.unit.factor == unit.factor:
            continue
        says = f"{item.name} is paid by the {item.unit}, and its quantity is {quantity}."
        settle = ["change the unit of the pay item"]
        if quantity.dimension == unit.dimension and quantity.nominal is not None:
            settle.insert(0, f"quantity {show(quantity.nominal, unit, 0)}")
        at = [
            evidence(item, "quantity", "quantity"),
            evidence(item, "unit", "unit of the pay item"),
        ]
        yield RULE.finding(None, says, at, settle)
