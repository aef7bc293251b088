"""A quantity larger than the limits, or a twentieth smaller.

Looks at
    The quantity of each pay item that is paid by area, and the area inside the limits of the
    areas that it pays for, each place once.

Why it matters
    More than the limits hold can only be paid by measuring something twice. Less can be a
    deduction, but one that large should be written into the limits.

Conflict
    pay_items.grinding.quantity: 14,800 SY

Settled
    pay_items.grinding.quantity: 13,800 SY

How to settle it
    Correct the quantity or the limits.

Sources
    arithmetic: area = length between the stations times width; 9 square feet are a square yard
    common practice, no source: a twentieth for castings, bridges and joints that are left out
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.payment._areas import compared
from specwriter.rules.rule import Rule

RULE = Rule(
    title="the quantity is not quite that of the limits",
    grade=Grade.CAUTION,
    basis="arithmetic",
    quiet_after=("quantity-in-another-unit", "quantity-against-limits"),
    base="complete/diamond_grinding",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each quantity above the limits, or a twentieth or more below them."""
    for each in compared(job):
        above = each.share > each.HUNDREDTH / 2
        if (above or each.share <= -each.TWENTIETH) and abs(each.share) < each.TENTH:
            yield RULE.finding(None, each.says, each.at, each.settle)
