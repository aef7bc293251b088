"""A quantity that the limits cannot give.

Looks at
    The quantity of each pay item that is paid by area, and the area inside the limits of the
    areas that it pays for, each place once.

Why it matters
    Bidders price the quantity and the contractor textures the limits. A quantity that is off by a
    tenth or more comes from another unit, a direction or a lane that was counted twice or not at
    all, or limits that have moved.

Conflict
    pay_items.grinding.quantity: 28,160 SY

Settled
    pay_items.grinding.quantity: 14,080 SY

How to settle it
    Correct the quantity or the limits. What is left out of the limits belongs in the limits.

Sources
    arithmetic: area = length between the stations times width; 9 square feet are a square yard
    common practice, no source: a tenth or more is not a matter of deductions
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.payment._areas import compared
from specwriter.rules.rule import Rule

RULE = Rule(
    title="the quantity does not follow from the limits",
    grade=Grade.CONFLICT,
    basis="arithmetic",
    quiet_after=("quantity-in-another-unit",),
    base="complete/diamond_grinding",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each quantity that is a tenth or more away from the area of the limits."""
    for each in compared(job):
        if abs(each.share) >= each.TENTH:
            yield RULE.finding(None, each.says, each.at, each.settle)
