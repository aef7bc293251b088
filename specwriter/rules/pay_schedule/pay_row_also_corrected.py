"""Results that one row of the pay table pays for and another sends to correction.

Looks at
    Rows that pay, and rows that only ask for corrective work.

Why it matters
    A segment inside both is bought as it is and at the same time must be ground again. A
    contractor who is paid for it will not come back with the machine.

Conflict
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.pay_adjustment:
      schedule: table
      bands:
        - {index: at most 48.0 in/mi, pay: 103 percent}
        - {index: 48.1 in/mi to 90.0 in/mi, pay: 100 percent}
        - {index: at least 80.1 in/mi, action: regrind}

Settled
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.pay_adjustment:
      schedule: table
      bands:
        - {index: at most 48.0 in/mi, pay: 103 percent}
        - {index: 48.1 in/mi to 80.0 in/mi, pay: 100 percent}
        - {index: at least 80.1 in/mi, action: regrind}

How to settle it
    End the paid row where correction begins, or begin correction where the paid row ends.

Sources
    arithmetic: the two ranges have results in common
    agency pay tables, compiled by a third party, undated, second-hand: full pay to 40
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.pay_schedule._table import NEEDS, Table, tables
from specwriter.rules.rule import Rule
from specwriter.trade.pay_schedule import Row, Shared, shared

RULE = Rule(
    title="a result is paid for and sent to correction",
    grade=Grade.CONFLICT,
    basis="arithmetic",
    needs=NEEDS,
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each row of correction that reaches into paid rows."""
    for table in tables(job):
        pairs = [
            pair
            for both in shared(table.rows)
            if not both.index.is_point and (pair := _paid_and_corrected(both))
        ]
        for correction in dict.fromkeys(other for _, other in pairs):
            paid = [row for row, other in pairs if other is correction]
            yield _finding(table, paid, correction)


def _paid_and_corrected(both: Shared) -> tuple[Row, Row] | None:
    for paid, other in ((both.smoother, both.rougher), (both.rougher, both.smoother)):
        if paid.pay and not paid.corrective and other.corrective and other.pay is None:
            # "at least 75: deduct" beside "at least 100: correct" means that the second takes over
            takes_over = paid.index.high is None and paid is both.smoother and paid.pay[0] < 0
            return None if takes_over else (paid, other)
    return None


def _finding(table: Table, paid: list[Row], other: Row) -> Finding:
    start = table.written(other.index.low, other) if other.index.low else "the first result"
    number = other.number + 1
    pays = " and ".join(
        f"row {row.number + 1} pays for {table.bands[row.number].index}" for row in paid
    )
    says = (
        f"{pays[0].upper()}{pays[1:]}, and row {number} asks for "
        f"'{table.bands[other.number].action}' from {start} on."
    )
    settle = (
        f"end row {paid[0].number + 1} below {start}",
        f"begin row {number} above the end of row {paid[-1].number + 1}",
    )
    at = [*table.at((*paid, other)), *table.at((other,), "action")]
    return RULE.finding(table.area, says, at, settle)
