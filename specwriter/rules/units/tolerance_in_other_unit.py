"""A value and its tolerance in different ways of writing.

Looks at
    Values with a tolerance: the unit and the form of both numbers.

Why it matters
    A gauge reads one scale. 1/4 in ± 2 mm cannot be read off it, and a decimal tolerance on a
    fraction is converted differently by everybody who checks it.

Conflict
    areas.mainline.groove.width: 1/8 in ± 0.5 mm

Settled
    areas.mainline.groove.width: 1/8 in ± 1/64 in

How to settle it
    Write both numbers in one unit and one form.

Sources
    UFC 3-260-02, ch. 21, 2001: 2 mm and 1/16 in are printed as one tolerance and are not equal
    common practice, no source: decimals and fractions of an inch are not mixed in one property
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.quantity import Quantity
from specwriter.rules.measures import measures
from specwriter.rules.rule import Rule

RULE = Rule(
    title="value and tolerance are written in different ways",
    grade=Grade.CAUTION,
    basis="published",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each value whose tolerance is of another unit or another form."""
    for area in job.areas.values():
        for each in measures(area):
            if each.value.form == "tolerance" and (difference := _difference(each.value)):
                says = f"The {each.label} is {each.value}: {difference}."
                settle = ("both numbers in one unit and one form",)
                yield RULE.finding(area, says, [each.evidence], settle)


def _difference(value: Quantity) -> str:
    nominal, *sides = (amount for amount in value.amounts)
    sides = [side for side in sides if side.value]
    units = {side.unit.system for side in sides} | {nominal.unit.system}
    if len(units - {"both"}) > 1:
        return "value and tolerance are of two unit systems"
    if nominal.is_fraction and any("." in side.text for side in sides):
        return "the value is a fraction and its tolerance a decimal"
    if "." in nominal.text and any(side.is_fraction for side in sides):
        return "the value is a decimal and its tolerance a fraction"
    return ""
