"""Results of the ride test that two rows of the pay table hold for.

Looks at
    The rows of the pay table that differ in pay or in what else follows.

Why it matters
    A segment in both rows earns two different sums. The table does not say which one, and the
    contractor will ask for the better, the agency for the other.

Conflict
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.pay_adjustment:
      schedule: table
      bands:
        - {index: at most 60.0 in/mi, pay: 105 percent}
        - {index: 50.0 in/mi to 75.0 in/mi, pay: 100 percent}
        - {index: at least 75.1 in/mi, action: regrind}

Settled
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.pay_adjustment:
      schedule: table
      bands:
        - {index: at most 60.0 in/mi, pay: 105 percent}
        - {index: 60.1 in/mi to 75.0 in/mi, pay: 100 percent}
        - {index: at least 75.1 in/mi, action: regrind}

How to settle it
    Let each row begin one reported step above the end of the row before it.

Sources
    arithmetic: the two ranges have results in common
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.pay_schedule._table import NEEDS, Table, tables
from specwriter.rules.rule import Rule
from specwriter.trade.pay_schedule import Shared, shared

RULE = Rule(
    title="two rows of the pay table hold for the same results",
    grade=Grade.CONFLICT,
    basis="arithmetic",
    needs=NEEDS,
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each pair of rows that overlap and do not say the same."""
    for table in tables(job):
        for both in shared(table.rows):
            if not both.index.is_point and _differ(both) and not _one_corrects(both):
                yield _finding(table, both)


def _differ(both: Shared) -> bool:
    first, second = both.smoother, both.rougher
    return (first.pay, first.corrective) != (second.pay, second.corrective)


def _one_corrects(both: Shared) -> bool:
    """A paid row and one that only corrects are another matter, with a rule of their own."""
    pairs = ((both.smoother, both.rougher), (both.rougher, both.smoother))
    return any(row.corrective and row.pay is None and other.pay for row, other in pairs)


def _finding(table: Table, both: Shared) -> Finding:
    number = both.rougher.number + 1
    sample = both.rougher if both.index.low == both.rougher.index.low else both.smoother
    low = "" if both.index.low is None else f" from {table.written(both.index.low, sample)}"
    high = "" if both.index.high is None else f" up to {table.written(both.index.high, sample)}"
    says = f"Rows {both.smoother.number + 1} and {number} both hold for results{low}{high}."
    settle = [f"let row {number} begin where row {both.smoother.number + 1} has ended"]
    if both.smoother.index.high is not None:
        first = table.written(both.smoother.index.high + table.step, both.rougher)
        settle = [f"let row {number} begin at {first}"]
    return RULE.finding(table.area, says, table.at((both.smoother, both.rougher)), settle)
