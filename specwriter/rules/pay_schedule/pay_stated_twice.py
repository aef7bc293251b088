"""Two pay tables for one area, or one table in two unit systems, that do not agree.

Looks at
    The pay table, and the pay table that another document or column of the contract states.

Why it matters
    A segment can earn a bonus by the table in inches per mile and none by the table in metres
    per kilometre, or pass in one and be rejected in the other.

Conflict
    areas.mainline.smoothness.index: IRI
    areas.mainline.smoothness.pay_adjustment:
      schedule: table
      bands:
        - {index: at most 60.00 in/mi, pay: 100 percent}
        - {index: 60.01 in/mi to 80.00 in/mi, pay: 95 percent}
        - {index: at least 80.01 in/mi, action: regrind}
    areas.mainline.also_stated:
      - in: metric column
        smoothness:
          pay_adjustment:
            bands:
              - {index: at most 0.947 m/km, pay: 100 percent}
              - {index: 0.948 m/km to 1.260 m/km, pay: 95 percent}
              - {index: at least 1.261 m/km, action: regrind}

Settled
    areas.mainline.smoothness.index: IRI
    areas.mainline.smoothness.pay_adjustment:
      schedule: table
      bands:
        - {index: at most 60.00 in/mi, pay: 100 percent}
        - {index: 60.01 in/mi to 80.00 in/mi, pay: 95 percent}
        - {index: at least 80.01 in/mi, action: regrind}
    areas.mainline.also_stated:
      - in: metric column
        smoothness:
          pay_adjustment:
            bands:
              - {index: at most 0.947 m/km, pay: 100 percent}
              - {index: 0.948 m/km to 1.263 m/km, pay: 95 percent}
              - {index: at least 1.264 m/km, action: regrind}

How to settle it
    Keep one table and say that it governs, or correct the value that was converted wrongly.

Sources
    arithmetic: 1 m/km = 63.36 in/mi exactly
    Maine DOT section 401, compiled by a third party, undated: 80.00 in/mi beside 1.26 m/km (79.83)
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Evidence, Finding, Grade
from specwriter.model import Job
from specwriter.model.area import Statement
from specwriter.quantity import show
from specwriter.rules.pay_schedule._table import NEEDS, Table, table_of, tables
from specwriter.rules.rule import Rule, evidence, given
from specwriter.trade.pay_schedule import Row

RULE = Rule(
    title="two pay tables of one contract disagree",
    grade=Grade.CONFLICT,
    basis="arithmetic",
    needs=(*NEEDS, "also_stated"),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each document whose table differs, at the first row that does."""
    for table in tables(job):
        for statement in table.area.also_stated:
            ride = statement.smoothness
            if ride and ride.pay_adjustment and ride.pay_adjustment.bands:
                other = table_of(table.area, ride, ride.pay_adjustment)
                yield from _compared(table, other, statement)


def _compared(table: Table, other: Table, statement: Statement) -> Iterator[Finding]:
    if len(table.bands) != len(other.bands):
        says = (
            f"This table has {len(table.bands)} rows, that of {statement.document} "
            f"{len(other.bands)}."
        )
        at = [*table.at(table.rows[-1:]), *_also(other, other.rows[-1:], "index")]
        yield RULE.finding(table.area, says, at, ("keep one table and say that it governs",))
        return
    for row, twin in zip(table.rows, other.rows, strict=False):
        if difference := _difference(table, row, other, twin):
            key, says = difference
            at = [*table.at((row,), key), *_also(other, (twin,), key)]
            settle = (f"correct row {row.number + 1} in one of them", "say which table governs")
            yield RULE.finding(table.area, says, at, settle)
            return


def _difference(table: Table, row: Row, other: Table, twin: Row) -> tuple[str, str] | None:
    """The key in which two rows differ, and the sentence that says so."""
    number = row.number + 1
    both = table.finest + other.finest
    unit = given(table.bands[row.number].index).unit
    # each column is rounded for itself; where a row begins, each is a step of its own further
    pairs = (
        (row.index.high, twin.index.high, both / 2),
        (row.index.low, twin.index.low, both * 3 / 2),
    )
    for mine, theirs, slack in pairs:
        if mine is None and theirs is None:
            continue
        if mine is None or theirs is None or abs(mine - theirs) > slack:
            here = "open" if mine is None else show(mine, unit, 2)
            there = "open" if theirs is None else show(theirs, unit, 2)
            return (
                "index",
                f"Row {number} has an end at {here} here and at {there} in the other table.",
            )
    if row.pay and twin.pay and row.pay != twin.pay:
        bands = table.bands[row.number], other.bands[twin.number]
        return (
            "pay",
            f"Row {number} pays {bands[0].pay} here and {bands[1].pay} in the other table.",
        )
    return None


def _also(other: Table, rows: tuple[Row, ...], key: str) -> Iterator[Evidence]:
    for row in rows:
        yield evidence(other.bands[row.number], key, f"{key} of row {row.number + 1}, other table")
