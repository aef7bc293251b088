"""A row of the pay table that pays in full for segments above the smoothness limit.

Looks at
    The smoothness limit, and rows of the pay table with full pay or a bonus and no correction.

Why it matters
    The limit says that the segment fails, the table pays its full price. The contractor reads
    the table as the limit, and the limit is lost.

Conflict
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.limit: at most 60 in/mi
    areas.mainline.smoothness.pay_adjustment:
      schedule: table
      bands:
        - {index: at most 45.0 in/mi, pay: 103 percent}
        - {index: 45.1 in/mi to 75.0 in/mi, pay: 100 percent}
        - {index: at least 75.1 in/mi, action: regrind}

Settled
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.limit: at most 75 in/mi
    areas.mainline.smoothness.pay_adjustment:
      schedule: table
      bands:
        - {index: at most 45.0 in/mi, pay: 103 percent}
        - {index: 45.1 in/mi to 75.0 in/mi, pay: 100 percent}
        - {index: at least 75.1 in/mi, action: regrind}

How to settle it
    Raise the limit to the end of full pay, or end full pay at the limit.

Sources
    arithmetic: a segment above the limit lies in a row of full pay
    common practice, no source: correction begins where full pay or the deductions end
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.quantity import Quantity
from specwriter.rules.pay_schedule._table import NEEDS, tables
from specwriter.rules.rule import Rule, evidence, given
from specwriter.trade.pay_schedule import Row

RULE = Rule(
    title="segments above the limit are paid in full",
    grade=Grade.CONFLICT,
    basis="arithmetic",
    needs=("smoothness.limit", *NEEDS),
    quiet_after=("index-unit", "pay-by-another-index", "pay-row-also-corrected"),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for the last row of full pay that reaches above the limit."""
    for table in tables(job):
        limit = given(table.ride.limit)
        paid = [row for row in table.rows if _pays_above(row, limit)]
        if not paid:
            continue
        row = paid[-1]
        band = table.bands[row.number]
        says = (
            f"A segment may have {limit}, and row {row.number + 1} pays {band.pay} "
            f"for {band.index}."
        )
        settle = (
            f"end row {row.number + 1} at {limit.amounts[-1].text} {limit.unit.symbol}",
            f"make the limit that of row {row.number + 1}",
            f"give row {row.number + 1} a corrective action",
        )
        at = [
            evidence(table.ride, "limit", "smoothness limit"),
            *table.at((row,)),
            *table.at((row,), "pay"),
        ]
        yield RULE.finding(table.area, says, at, settle)


def _pays_above(row: Row, limit: Quantity) -> bool:
    high = limit.reading.high
    if high is None or row.pay is None or row.corrective or row.pay[1] < 0:
        return False
    return row.index.high is None or row.index.high > high
