"""A bonus larger than the cap on all adjustments.

Looks at
    The cap of the pay adjustment and the best row of the pay table.

Why it matters
    A bidder counts on the best row. Where the cap is lower, part of what the table promises
    can never be earned.

Conflict
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.pay_adjustment:
      schedule: table
      cap: at most 5 percent
      bands:
        - {index: at most 45.0 in/mi, pay: 107 percent}
        - {index: at least 45.1 in/mi, pay: 100 percent}

Settled
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.pay_adjustment:
      schedule: table
      cap: at most 5 percent
      bands:
        - {index: at most 45.0 in/mi, pay: 105 percent}
        - {index: at least 45.1 in/mi, pay: 100 percent}

How to settle it
    Raise the cap to the best row, or lower the row to the cap.

Sources
    arithmetic: the best row pays more than the cap allows on the whole
    common practice, no source: the cap limits the sum, so a single segment may still earn the row
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.quantity import Quantity
from specwriter.rules.pay_schedule._table import NEEDS, Table, tables
from specwriter.rules.rule import Rule, evidence, given
from specwriter.trade.pay_schedule import Row

RULE = Rule(
    title="the best row pays more than the cap",
    grade=Grade.CAUTION,
    basis="arithmetic",
    needs=("smoothness.pay_adjustment.cap", *NEEDS),
    quiet_after=("pay-share-or-addition",),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each table whose best row lies above its cap."""
    for table in tables(job):
        cap = given(table.pay.cap)
        bonuses = {row.number: _bonus(table, row, cap.dimension) for row in table.rows}
        best = max(table.rows, key=lambda row: bonuses[row.number], default=None)
        if best is None or bonuses[best.number] <= _most(cap):
            continue
        says = (
            f"Row {best.number + 1} pays {table.bands[best.number].pay}, and all adjustments "
            f"together are capped at {cap.amounts[-1].text}"
            f"{' percent' if cap.dimension == 'percent' else ''}."
        )
        at = [evidence(table.pay, "cap", "cap"), *table.at((best,), "pay")]
        yield RULE.finding(table.area, says, at, ("raise the cap", "lower the best row to the cap"))


def _most(cap: Quantity) -> Fraction:
    """What the cap adds to the price; 100 percent or more is a share of it, as in the rows."""
    most = cap.interval.high or Fraction(0)
    return most - 1 if cap.dimension == "percent" and most >= 1 else most


def _bonus(table: Table, row: Row, kind: str) -> Fraction:
    """What the row adds to the price, where it pays in the kind of the cap."""
    if row.pay is None or table.kind(row) != kind:
        return Fraction(0)
    return max(row.pay)
