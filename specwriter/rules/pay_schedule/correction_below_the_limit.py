"""A row of the pay table that sends segments to correction which meet the smoothness limit.

Looks at
    The smoothness limit, and rows of the pay table that ask for corrective work and pay nothing
    less than the full price.

Why it matters
    The limit says that the segment passes, the table has it ground again. The contractor stops at
    the limit, and the agency sends the machine back.

Conflict
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.limit: at most 75 in/mi
    areas.mainline.smoothness.pay_adjustment:
      schedule: table
      bands:
        - {index: at most 60.0 in/mi, pay: 100 percent}
        - {index: at least 60.1 in/mi, action: regrind}

Settled
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.limit: at most 60 in/mi
    areas.mainline.smoothness.pay_adjustment:
      schedule: table
      bands:
        - {index: at most 60.0 in/mi, pay: 100 percent}
        - {index: at least 60.1 in/mi, action: regrind}

How to settle it
    Begin correction above the limit, or lower the limit to where correction begins.

Sources
    arithmetic: the row holds for results that the limit allows
    agency pay tables, compiled by a third party, undated, second-hand: corrected from 30
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.pay_schedule._table import NEEDS, Table, tables
from specwriter.rules.rule import Rule, evidence, given
from specwriter.trade.pay_schedule import Row

RULE = Rule(
    title="segments that meet the limit are sent to correction",
    grade=Grade.CONFLICT,
    basis="arithmetic",
    needs=("smoothness.limit", *NEEDS),
    quiet_after=(
        *("index-unit", "pay-by-another-index", "pay-row-also-corrected", "pay-rows-overlap"),
        "full-pay-above-the-limit",
    ),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for the smoothest row of correction that reaches below the limit."""
    for table in tables(job):
        limit = given(table.ride.limit)
        row = next((each for each in table.rows if _corrects_below(table, each)), None)
        if row is None:
            continue
        band = table.bands[row.number]
        says = (
            f"A segment may have {limit}, and row {row.number + 1} asks for '{band.action}' "
            f"for {band.index}."
        )
        settle = (
            f"begin row {row.number + 1} above {limit.amounts[-1].text} {limit.unit.symbol}",
            f"lower the limit to where row {row.number + 1} begins",
        )
        at = [
            evidence(table.ride, "limit", "smoothness limit"),
            *table.at((row,)),
            *table.at((row,), "action"),
        ]
        yield RULE.finding(table.area, says, at, settle)


def _corrects_below(table: Table, row: Row) -> bool:
    limit, low = given(table.ride.limit), row.index.low
    high = limit.interval.high
    if high is None or not row.corrective or (row.pay is not None and min(row.pay) < 0):
        return False
    rounding = max(amount.slack for amount in limit.amounts)
    return low is None or low + table.step < high - rounding
