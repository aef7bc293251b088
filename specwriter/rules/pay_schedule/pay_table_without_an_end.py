"""A pay table that begins above zero, or stops before the roughest result.

Looks at
    The first and the last row of the pay table, and the smoothness limit.

Why it matters
    The best segment of the job may lie below the first row and the worst above the last.
    For both the contract has promised nothing.

Conflict
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.pay_adjustment:
      schedule: table
      bands:
        - {index: 40.0 in/mi to 55.0 in/mi, pay: 103 percent}
        - {index: at least 55.1 in/mi, pay: 100 percent}

Settled
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.pay_adjustment:
      schedule: table
      bands:
        - {index: at most 55.0 in/mi, pay: 103 percent}
        - {index: at least 55.1 in/mi, pay: 100 percent}

How to settle it
    Write the first row as "at most" and the last as "at least".

Sources
    arithmetic: a result outside every row has no pay rule
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.pay_schedule._table import NEEDS, Table, tables
from specwriter.rules.rule import Rule, given
from specwriter.trade.pay_schedule import in_order

RULE = Rule(
    title="the pay table is open at one end",
    grade=Grade.OPEN,
    basis="arithmetic",
    needs=NEEDS,
    quiet_after=("index-unit",),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each end of a table beyond which a result has no row."""
    for table in tables(job):
        if table.rows:
            yield from _smooth_end(table)
            yield from _rough_end(table)


def _smooth_end(table: Table) -> Iterator[Finding]:
    first = in_order(table.rows)[0]
    if not first.index.low:
        return
    low = table.written(first.index.low, first)
    says = f"The smoothest row begins at {low}; a smoother segment has no row."
    high = first.index.high
    end = f"at most {table.written(high, first)}" if high is not None else "open at the smooth end"
    yield RULE.finding(table.area, says, table.at((first,)), (f"make the row {end}",))


def _rough_end(table: Table) -> Iterator[Finding]:
    if any(row.index.high is None for row in table.rows):
        return
    last = max(table.rows, key=lambda row: given(row.index.high))
    end = given(last.index.high)
    limit = table.ride.limit
    if limit and limit.interval.high is not None and limit.interval.high <= end:
        return  # what lies above fails the limit, and has the remedy of the test
    high = table.written(end, last)
    says = f"The roughest row ends at {high}, and the job does not say what follows above it."
    settle = (
        "add a row for rougher segments, with its pay or its correction",
        f"set the smoothness limit at {high}",
    )
    yield RULE.finding(table.area, says, table.at((last,)), settle)
