"""Results of the ride test that no row of the pay table holds for.

Looks at
    The rows of the pay table, and the step to which the index is rounded.

Why it matters
    A segment whose result falls between two rows has no pay rule. Either party can claim the
    row that suits it, and the dispute comes after the lane is open.

Conflict
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.pay_adjustment:
      schedule: table
      bands:
        - {index: at most 59.9 in/mi, pay: 105 percent}
        - {index: 60.0 in/mi to 70.0 in/mi, pay: 100 percent}
        - {index: at least 95.1 in/mi, action: regrind}

Settled
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.pay_adjustment:
      schedule: table
      bands:
        - {index: at most 59.9 in/mi, pay: 105 percent}
        - {index: 60.0 in/mi to 95.0 in/mi, pay: 100 percent}
        - {index: at least 95.1 in/mi, action: regrind}

How to settle it
    Let the next row begin one reported step above the end of the row before it, or add a row.

Sources
    arithmetic: a result between the end of one row and the beginning of the next lies in neither
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.pay_schedule._table import NEEDS, Table, tables
from specwriter.rules.rule import Rule, evidence
from specwriter.trade.pay_schedule import Gap, gaps

RULE = Rule(
    title="the pay table leaves results without a row",
    grade=Grade.CONFLICT,
    basis="arithmetic",
    needs=NEEDS,
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each stretch that is wider than a reported step."""
    for table in tables(job):
        for gap in gaps(table.rows):
            if gap.width > table.step + table.rounding(gap):
                yield _finding(table, gap)


def _finding(table: Table, gap: Gap) -> Finding:
    low, high = table.written(gap.low, gap.smoother), table.written(gap.high, gap.rougher)
    says = (
        f"Row {gap.smoother.number + 1} ends at {low} and row {gap.rougher.number + 1} begins at "
        f"{high}: a result between them has no row."
    )
    at = table.at((gap.smoother, gap.rougher))
    stated = table.ride.reported_to
    if stated is not None:
        at.append(evidence(table.ride, "reported_to", "rounding of the index"))
        says += f" Rounding to {stated} does not close the gap."
    first = table.written(gap.low + table.step, gap.rougher)
    settle = (
        f"let row {gap.rougher.number + 1} begin at {first}",
        f"let row {gap.smoother.number + 1} end one reported step below {high}",
        "add a row between them",
    )
    return RULE.finding(table.area, says, at, settle)
