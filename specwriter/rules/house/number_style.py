"""An inch written in another style than the house writes it.

Looks at
    Dimensions of the cut and its limits in inches, against the setting number_style: fractions or
    decimals.

Why it matters
    Gauges are marked in one of the two. A dimension in the other is converted in the field, and
    0.095 becomes 3/32 or 1/10 by whoever holds the gauge.

Conflict
    settings.number_style: fractions
    areas.mainline.groove: {width: 1/8 in, depth: 0.06 in}
    areas.mainline.land: null

Settled
    settings.number_style: fractions
    areas.mainline.groove: {width: 1/8 in, depth: 1/16 in}
    areas.mainline.land: null

How to settle it
    Write the dimension in the style of the house; blades alone are commonly given in decimals.

Sources
    California DOT Standard Specifications 42-2, 2015: 0.095 in where others have 3/32 in
    common practice, no source: one property is written in one style
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.quantity import Quantity
from specwriter.rules.measures import measures
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="an inch is not written as the house writes it",
    grade=Grade.NOTE,
    basis="practice",
    needs=("settings.number_style",),
)

_BLADES = ("blade", "flush_grind")
"""Blades are sold by thousandths of an inch, whatever the style of the house."""


def check(job: Job) -> Iterator[Finding]:
    """One finding for each area with dimensions in the other style."""
    settings = given(job.settings)
    style = given(settings.number_style)
    for area in job.areas.values():
        other = [
            each
            for each in measures(area)
            if each.name.split(".")[0] not in _BLADES and _style(each.value) not in ("", style)
        ]
        if not other:
            continue
        written = ", ".join(f"{each.label} {each.value}" for each in other)
        says = f"{written[0].upper()}{written[1:]}; the setting number_style is {style}."
        at = [each.evidence for each in other]
        at.append(evidence(settings, "number_style", "setting number_style"))
        yield RULE.finding(area, says, at, (f"write {style}",))


def _style(value: Quantity) -> str:
    """How parts of an inch are written; empty for whole inches and for other units."""
    texts = [amount for amount in value.amounts if amount.unit.symbol == "in"]
    if any(amount.is_fraction for amount in texts):
        return "fractions"
    return "decimals" if any("." in amount.text for amount in texts) else ""
