"""Percentages of a pay table that may be shares of the price or additions to it.

Looks at
    Pay tables whose percentages are all below one half.

Why it matters
    "3 percent" may mean 103 percent of the price or three hundredths of it. The job file reads
    a percentage as a share of the price, and so will some readers of the contract.

Conflict
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.pay_adjustment:
      schedule: table
      bands:
        - {index: at most 45.0 in/mi, pay: 3 percent}
        - {index: at least 45.1 in/mi, pay: 0 percent}

Settled
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.pay_adjustment:
      schedule: table
      bands:
        - {index: at most 45.0 in/mi, pay: 103 percent}
        - {index: at least 45.1 in/mi, pay: 100 percent}

How to settle it
    Write what is paid as a share of the price: 103 percent for a bonus of 3 percent.

Sources
    common practice, no source: pay factors are written as shares of the price, near 100 percent
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.quantity import UNITS, show
from specwriter.rules.pay_schedule._table import NEEDS, tables
from specwriter.rules.rule import Rule, given

RULE = Rule(
    title="a percentage may be a share of the price or an addition to it",
    grade=Grade.OPEN,
    basis="wording",
    needs=NEEDS,
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each table that seems to add its percentages."""
    for table in tables(job):
        shares = [row for row in table.rows if row.pay and table.kind(row) == "percent"]
        if not shares or not table.adds:
            continue
        first = shares[0]
        written = table.bands[first.number].pay
        whole = show(1 + given(first.pay)[0], UNITS["percent"], 2)
        says = f"{written} of the price, or the price and {written} more?"
        settle = (f"{whole} for row {first.number + 1}, if it adds, and the others alike",)
        yield RULE.finding(table.area, says, table.at(shares, "pay"), settle)
