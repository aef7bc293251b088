"""A pay item measured in another unit than it is paid.

Looks at
    The unit of each pay item, and the unit or the kind of quantity that its measuring rule names.

Why it matters
    A table that pays by the square foot and a rule that measures square yards differ by nine; a
    rule that measures length cannot be paid by area at all. The difference is found at the first
    estimate, when the price cannot be changed any more.

Conflict
    pay_items.grinding.unit: SY
    pay_items.grinding.measured_as: length along the centerline of each lane

Settled
    pay_items.grinding.unit: SY
    pay_items.grinding.measured_as: plan area, from length and width, each area once

How to settle it
    Measure and pay in one unit.

Sources
    FHWA review guide on measurement and payment, 1999: measurement and payment agree
    Texas DOT PS&E manual, section 4.3, undated: their conflict is a common basis of claims
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.quantity import Unit
from specwriter.rules.payment._units import is_each, is_lump_sum, kinds_named, pay_unit, units_named
from specwriter.rules.prose import listed
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="paid in one unit, measured in another",
    grade=Grade.CONFLICT,
    basis="published",
    base="complete/diamond_grinding",
)


_LUMP = Unit("LS", "lump sum", Fraction(1), "both")
_EACH = Unit("EA", "each", Fraction(1), "both")


def check(job: Job) -> Iterator[Finding]:
    """One finding for each pay item whose measuring rule names another unit or kind of quantity."""
    for item in job.pay_items.values():
        unit = _unit(item.unit)
        if unit is None or item.measured_as is None:
            continue
        if measured := _measured(item.measured_as, unit):
            at = [
                evidence(item, "unit", "unit of the pay item"),
                evidence(item, "measured_as", "measured as"),
            ]
            says = f"{item.name} is paid by the {item.unit}, and its rule measures {measured}."
            settle = (f"measure it in {item.unit}", "change the unit of the pay item")
            yield RULE.finding(None, says, at, settle)


def _unit(text: str) -> Unit | None:
    if is_lump_sum(text):
        return _LUMP
    return _EACH if is_each(text) else pay_unit(text)


def _measured(text: str, unit: Unit) -> str:
    """What a rule measures, where that cannot be paid in the unit; empty where it can."""
    units = units_named(text)
    kinds = kinds_named(text)
    if unit.dimension in kinds:
        others = [each.symbol for each in units if each.dimension == unit.dimension]
        same = {unit.symbol, *(["SY"] if unit.symbol == "yd2" else [])}
        return listed(others) if others and not same & set(others) else ""
    return listed(sorted(kinds)) if kinds else ""
