"""A row of the pay table that holds for one single value.

Looks at
    Rows whose range has no width.

Why it matters
    Only a segment that hits the value exactly earns such a row. Where it is the row of full
    pay, practically every segment gets a bonus or a deduction. Often the formula that belonged
    to the row was lost when the table was copied.

Conflict
    areas.mainline.smoothness.index: IRI
    areas.mainline.smoothness.pay_adjustment:
      schedule: table
      bands:
        - {index: at most 99.9 in/mi, pay: 103 percent}
        - {index: 100 in/mi, pay: 100 percent}
        - {index: at least 100.1 in/mi, pay: 95 percent}

Settled
    areas.mainline.smoothness.index: IRI
    areas.mainline.smoothness.pay_adjustment:
      schedule: table
      bands:
        - {index: at most 89.9 in/mi, pay: 103 percent}
        - {index: 90.0 in/mi to 100 in/mi, pay: 100 percent}
        - {index: at least 100.1 in/mi, pay: 95 percent}

How to settle it
    Give the row a range, or take it out and let pay run on a line through the value.

Sources
    arithmetic: a range whose ends are equal holds one value
    agency pay tables, compiled by a third party, undated, second-hand: full pay at 7 only
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.pay_schedule._table import NEEDS, tables
from specwriter.rules.rule import Rule, given

RULE = Rule(
    title="a row of the pay table holds for one value only",
    grade=Grade.CAUTION,
    basis="arithmetic",
    needs=NEEDS,
    quiet_after=("pay-rows-overlap",),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each row without width."""
    for table in tables(job):
        for row in table.rows:
            if not row.index.is_point:
                continue
            value = table.written(given(row.index.low), row)
            says = f"Row {row.number + 1} holds for a result of exactly {value} and for no other."
            settle = (
                f"give row {row.number + 1} a range",
                "take the row out and let its neighbours meet",
            )
            yield RULE.finding(table.area, says, table.at((row,)), settle)
