"""Rows of a pay table that meet only if the result is rounded, without a word on rounding.

Looks at
    Pay tables written in steps coarser than 0.1 in/mi (0.01 m/km), and the rounding of the index.

Why it matters
    Profilers report tenths of an inch per mile. Between a row that ends at 59 and one that
    begins at 60 lie nine results, and they earn one row or the other by how they are rounded.

Conflict
    areas.mainline.smoothness.index: IRI
    areas.mainline.smoothness.pay_adjustment:
      schedule: table
      bands:
        - {index: at most 59 in/mi, pay: 105 percent}
        - {index: 60 in/mi to 80 in/mi, pay: 100 percent}
        - {index: at least 81 in/mi, action: regrind}

Settled
    areas.mainline.smoothness.index: IRI
    areas.mainline.smoothness.reported_to: 1 in/mi
    areas.mainline.smoothness.pay_adjustment:
      schedule: table
      bands:
        - {index: at most 59 in/mi, pay: 105 percent}
        - {index: 60 in/mi to 80 in/mi, pay: 100 percent}
        - {index: at least 81 in/mi, action: regrind}

How to settle it
    State the step to which the index is rounded (reported_to), or write the rows in tenths.

Sources
    arithmetic: whole-number rows leave the tenths between them without a row
    agency pay tables, compiled by a third party, undated, second-hand: steps of 0.1
    common practice, no source: roughness is reported to 0.1 in/mi or 0.01 m/km
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.pay_schedule._table import NEEDS, Table, tables
from specwriter.rules.places import INCH_PER_MILE
from specwriter.rules.rule import Rule
from specwriter.trade.pay_schedule import Gap, gaps

RULE = Rule(
    title="the rows meet only by rounding, and no rounding is stated",
    grade=Grade.OPEN,
    basis="arithmetic",
    needs=NEEDS,
    quiet_after=("pay-rows-leave-a-gap", "pay-rows-overlap"),
)

_USUAL = {"us": Fraction(1, 10) * INCH_PER_MILE, "si": Fraction(1, 100) / 1000}
"""Step of a reported index, as a slope: 0.1 in/mi and 0.01 m/km."""


def check(job: Job) -> Iterator[Finding]:
    """One finding for each table whose rows are a coarse step apart."""
    for table in tables(job):
        if table.ride.reported_to is not None or not table.rows:
            continue
        unit = table.indexes[0].unit
        if table.finest <= _USUAL["si" if unit.system == "si" else "us"]:
            continue
        if apart := [gap for gap in gaps(table.rows) if gap.width <= table.step]:
            yield _finding(table, apart)


def _finding(table: Table, apart: list[Gap]) -> Finding:
    first = apart[0]
    low, high = table.written(first.low, first.smoother), table.written(first.high, first.rougher)
    says = (
        f"A result between {low} and {high} lies in a row only after rounding, and the job does "
        "not say to which step the index is rounded."
    )
    step = table.written(table.finest, first.smoother)
    settle = (
        f"reported_to: {step}, if that is how results are rounded",
        "write the rows in tenths",
    )
    rows = [row for gap in apart for row in (gap.smoother, gap.rougher)]
    return RULE.finding(table.area, says, table.at(rows), settle)
