"""A pay item without a measuring rule.

Looks at
    Whether each pay item says as what its quantity is measured.

Why it matters
    "Square yard" is a unit, not a rule. Whether an area cut twice counts twice, and whether the
    strip along the kerb counts at all, can change the quantity by several percent.

Conflict
    pay_items.grinding.measured_as: null

Settled
    pay_items.grinding.measured_as: plan area, each area once, without deduction for margins

How to settle it
    State what is measured, where and how, and what is not deducted.

Sources
    FHWA HIAM-20, attachment 3, 2010: a clear statement of what is measured, and how
    FHWA Federal Lands FP-14, section 109.01, 2014: work is measured when in place and complete
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="a pay item without a measuring rule",
    grade=Grade.OPEN,
    basis="published",
    gap=True,
    base="complete/diamond_grinding",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each pay item that does not say as what it is measured."""
    for item in job.pay_items.values():
        if item.measured_as is not None:
            continue
        at = [evidence(item, "name", "pay item"), evidence(item, "unit", "unit of the pay item")]
        says = f"{item.name} is paid by the {item.unit}; the job does not say what is measured."
        yield RULE.finding(None, says, at, ("state measured_as",))
