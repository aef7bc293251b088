"""A cap on the bonus that is more than the work costs.

Looks at
    The cap of the pay adjustment in dollars, against the price of the whole area: unit price times
    quantity of its pay item.

Why it matters
    A cap is there to hold the bonus to a part of the price. One above the price of the work holds
    nothing; mostly it was set for another contract, or for pavement and not for its texture.

Conflict
    pay_items.grinding: {name: Diamond Grinding, unit: SY, quantity: "1,000 SY", unit_price: $6/SY}
    areas.mainline.smoothness: {index: MRI, pay_adjustment: {cap: "$20,000"}}
    areas.mainline.limits: null

Settled
    pay_items.grinding: {name: Diamond Grinding, unit: SY, quantity: "1,000 SY", unit_price: $6/SY}
    areas.mainline.smoothness: {index: MRI, pay_adjustment: {cap: $300}}
    areas.mainline.limits: null

How to settle it
    Set the cap as a share of the price of this work.

Sources
    arithmetic: unit price x quantity against the cap
    common practice, no source: a bonus for ride is a few percent of the price
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.model.contract import PayItem
from specwriter.quantity import UNITS, show
from specwriter.rules.payment._units import pay_unit
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="the cap on the bonus is more than the work costs",
    grade=Grade.CAUTION,
    basis="arithmetic",
    needs=("smoothness.pay_adjustment.cap", "pay_item"),
    quiet_after=("price-in-another-unit", "quantity-in-another-unit"),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each area whose cap is above the price of its pay item."""
    for area in job.areas.values():
        pay = given(given(area.smoothness).pay_adjustment)
        item, cap = job.pay_items.get(given(area.pay_item)), given(pay.cap)
        cost = _cost(item) if item is not None else None
        if item is None or cost is None or cap.dimension != "money":
            continue
        if cap.amounts[-1].base <= cost:
            continue
        says = f"The cap is {cap}; all of {item.name} costs {show(cost, UNITS['$'], 0)}."
        at = [
            evidence(pay, "cap", "cap"),
            evidence(item, "unit_price", "unit price"),
            evidence(item, "quantity", "quantity"),
        ]
        yield RULE.finding(area, says, at, ("a cap of a few percent of that price",))


def _cost(item: PayItem) -> Fraction | None:
    """Unit price times quantity in dollars, where both are stated in the unit of the item."""
    unit, price, quantity = pay_unit(item.unit), item.unit_price, item.quantity
    if unit is None or price is None or quantity is None:
        return None
    if quantity.dimension != unit.dimension:
        return None
    per_base = price.amounts[0].value / unit.factor
    return per_base * quantity.amounts[0].base
