"""A row of the pay table narrower than two profilers agree.

Looks at
    The width of the rows of a table that pays by IRI, MRI or HRI.

Why it matters
    If two runs over the same lane can differ by as much as the row is wide, the row that a
    segment falls into is chance.

Conflict
    areas.mainline.smoothness.index: IRI
    areas.mainline.smoothness.pay_adjustment:
      schedule: table
      bands:
        - {index: at most 38.0 in/mi, pay: 102 percent}
        - {index: 38.1 in/mi to 42.0 in/mi, pay: 100 percent}
        - {index: at least 42.1 in/mi, pay: 95 percent}

Settled
    areas.mainline.smoothness.index: IRI
    areas.mainline.smoothness.pay_adjustment:
      schedule: table
      bands:
        - {index: at most 38.0 in/mi, pay: 102 percent}
        - {index: 38.1 in/mi to 50.0 in/mi, pay: 100 percent}
        - {index: at least 50.1 in/mi, pay: 95 percent}

How to settle it
    Widen the row to more than the reproducibility of the profilers that will be used.

Sources
    AASHTO R 56-14(2018): profilers are certified by repeatability and accuracy
    memory, unverified: two certified profilers agree within about 5 in/mi
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.pay_schedule._table import NEEDS, Table, tables
from specwriter.rules.places import INCH_PER_MILE, ROUGHNESS_INDEXES
from specwriter.rules.rule import Rule
from specwriter.trade.pay_schedule import Row

RULE = Rule(
    title="a row of the pay table is narrower than two profilers agree",
    grade=Grade.NOTE,
    basis="practice",
    needs=("smoothness.index", *NEEDS),
    quiet_after=("pay-rows-overlap", "pay-row-of-one-value", "index-unit"),
)

_AGREE = 5
"""in/mi; from memory, unverified."""


def check(job: Job) -> Iterator[Finding]:
    """One finding for each table with rows that are too narrow."""
    for table in tables(job):
        narrow = [row for row in table.rows if _is_narrow(row)]
        if narrow and table.ride.index in ROUGHNESS_INDEXES:
            yield _finding(table, narrow)


def _is_narrow(row: Row) -> bool:
    low, high = row.index.low, row.index.high
    return low is not None and high is not None and 0 < high - low < _AGREE * INCH_PER_MILE


def _finding(table: Table, narrow: list[Row]) -> Finding:
    ranges = " and ".join(str(table.bands[row.number].index) for row in narrow)
    says = (
        f"{ranges}: two certified profilers may differ by about {_AGREE} in/mi (memory, "
        "unverified), so chance decides the row."
    )
    settle = ("widen the row", "state the reproducibility that the profilers must show")
    return RULE.finding(table.area, says, table.at(narrow), settle)
