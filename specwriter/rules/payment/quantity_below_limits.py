"""A quantity a little smaller than the limits, and nothing says what is left out.

Looks at
    The quantity of each pay item that is paid by area, where it is from 2 to 5 percent smaller
    than the area inside the limits and the rule of measuring deducts nothing.

Why it matters
    Castings, bridges and joints explain a few percent. Where the rule of measuring leaves them in,
    the final quantity comes out higher than the one that was bid.

Conflict
    pay_items.grinding.quantity: 13,600 SY

Settled
    pay_items.grinding.quantity: 14,080 SY

How to settle it
    Correct the quantity, or say under measured_as what is deducted.

Sources
    arithmetic: area = length between the stations times width; 9 square feet are a square yard
    common practice, no source: what is less than 2 percent is rounding
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from fractions import Fraction

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.payment._areas import compared
from specwriter.rules.rule import Rule

RULE = Rule(
    title="the quantity is a little below the limits",
    grade=Grade.NOTE,
    basis="arithmetic",
    quiet_after=("quantity-in-another-unit", "quantity-against-limits"),
    base="complete/diamond_grinding",
)

_ROUNDING = Fraction(2, 100)
_LEFT_OUT = re.compile(r"\b(?:less|except|exclud\w*|deducted|deducting|minus|net)\b", re.IGNORECASE)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each quantity a few percent below the limits that nothing explains."""
    for each in compared(job):
        explained = _LEFT_OUT.search(each.item.measured_as or "")
        if -each.TWENTIETH < each.share <= -_ROUNDING and not explained:
            settle = (*each.settle, "say under measured_as what is deducted")
            yield RULE.finding(None, each.says, each.at, settle)
