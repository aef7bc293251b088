"""A statement that pay is not adjusted, beside a table that adjusts it.

Looks at
    The pay schedule and its rows.

Why it matters
    One reader finds "no adjustment" and bids without the bonus, the other finds the table and
    counts on it. Mostly one of the two was left over from another contract.

Conflict
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.pay_adjustment:
      schedule: none
      bands:
        - {index: at most 45.0 in/mi, pay: 103 percent}
        - {index: at least 45.1 in/mi, pay: 100 percent}

Settled
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.pay_adjustment: {schedule: none}

How to settle it
    Take the rows out, or write schedule: table.

Sources
    practice: a provision says once whether smoothness is paid for
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.pay_schedule._table import NEEDS, tables
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="no adjustment is stated beside a table that adjusts",
    grade=Grade.CONFLICT,
    basis="wording",
    needs=("smoothness.pay_adjustment.schedule", *NEEDS),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each table beside the statement that there is none."""
    for table in tables(job):
        if table.pay.schedule != "none":
            continue
        says = f"Pay is not to be adjusted, and {len(table.bands)} rows adjust it."
        at = [evidence(table.pay, "schedule", "pay schedule"), *table.at(table.rows[:1])]
        yield RULE.finding(table.area, says, at, ("schedule: table", "take the rows out"))
