"""A result on which one row of the pay table ends and the next begins.

Looks at
    The ends of neighbouring rows that differ in pay or in what else follows.

Why it matters
    A segment that measures exactly the shared value stands in both rows. It is one result
    among many, but the tables that print it so are argued about at just that value.

Conflict
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.pay_adjustment:
      schedule: table
      bands:
        - {index: 0 in/mi to 57.5 in/mi, pay: 103 percent}
        - {index: 57.5 in/mi to 75 in/mi, pay: 100 percent}
        - {index: at least 75.1 in/mi, action: regrind}

Settled
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.pay_adjustment:
      schedule: table
      bands:
        - {index: 0 in/mi to 57.5 in/mi, pay: 103 percent}
        - {index: 57.6 in/mi to 75 in/mi, pay: 100 percent}
        - {index: at least 75.1 in/mi, action: regrind}

How to settle it
    Let the rougher row begin one reported step higher.

Sources
    arithmetic: both rows include their ends
    agency pay tables, compiled by a third party, undated, second-hand: 57.5 shared
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.pay_schedule._table import NEEDS, Table, tables
from specwriter.rules.rule import Rule, given
from specwriter.trade.pay_schedule import Shared, shared

RULE = Rule(
    title="neighbouring rows of the pay table share a value",
    grade=Grade.CAUTION,
    basis="arithmetic",
    needs=NEEDS,
    quiet_after=("pay-rows-overlap",),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each table, with all values that two rows share."""
    for table in tables(job):
        if ends := [both for both in shared(table.rows) if _disagree(both)]:
            yield _finding(table, ends)


def _disagree(both: Shared) -> bool:
    """True where one value earns two results; a line that runs through it earns one."""
    if not both.index.is_point:
        return False
    value, pair = given(both.index.low), (both.smoother, both.rougher)
    return len({(row.at(value), row.corrective) for row in pair}) > 1


def _finding(table: Table, ends: list[Shared]) -> Finding:
    values = [table.written(given(both.index.low), both.rougher) for both in ends]
    named = " and ".join(dict.fromkeys(values))
    one = len(set(values)) == 1
    says = f"{named} {'stands' if one else 'stand'} in two rows each."
    settle = [
        f"let row {both.rougher.number + 1} begin at "
        f"{table.written(given(both.index.low) + table.step, both.rougher)}"
        for both in ends
    ]
    rows = [row for both in ends for row in (both.smoother, both.rougher)]
    says = says.removesuffix(" each.") + "." if one else says
    return RULE.finding(table.area, says, table.at(rows), ["; ".join(settle)])
