"""A pay table that pays more for a rougher segment.

Looks at
    The pay of neighbouring rows.

Why it matters
    Where pay rises with roughness the contract rewards the worse work. Mostly two rows were
    interchanged or a minus sign was lost.

Conflict
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.pay_adjustment:
      schedule: table
      bands:
        - {index: at most 45.0 in/mi, pay: 100 percent}
        - {index: 45.1 in/mi to 75.0 in/mi, pay: 103 percent}
        - {index: at least 75.1 in/mi, action: regrind}

Settled
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.pay_adjustment:
      schedule: table
      bands:
        - {index: at most 45.0 in/mi, pay: 103 percent}
        - {index: 45.1 in/mi to 75.0 in/mi, pay: 100 percent}
        - {index: at least 75.1 in/mi, action: regrind}

How to settle it
    Put the sums in the order of the rows, and give a deduction its minus sign.

Sources
    arithmetic: pay must not rise with the index
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Evidence, Finding, Grade
from specwriter.model import Job
from specwriter.rules.pay_schedule._table import NEEDS, Table, tables
from specwriter.rules.rule import Rule
from specwriter.trade.pay_schedule import steps

RULE = Rule(
    title="a rougher segment is paid more",
    grade=Grade.CONFLICT,
    basis="arithmetic",
    needs=NEEDS,
    quiet_after=("pay-rows-overlap", "pay-share-or-addition"),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each pair of rows in which pay rises with roughness."""
    for table in tables(job):
        for says, at in _rises(table):
            settle = (
                "put the sums in the order of the rows",
                "give the deduction its minus sign, or write it as a share below 100 percent",
            )
            yield RULE.finding(table.area, says, at, settle)


def _rises(table: Table) -> Iterator[tuple[str, list[Evidence]]]:
    pays = [band.pay for band in table.bands]
    for step in steps(table.rows):
        if step.change > 0 and table.same_kind(step):
            first, second = step.smoother.number, step.rougher.number
            says = (
                f"Row {first + 1} pays {pays[first]}, and row {second + 1}, which is rougher, "
                f"pays {pays[second]}."
            )
            yield says, table.at((step.smoother, step.rougher), "pay")
