"""The pay schedule for ride as a function of the index: its corners, and its largest step."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from fractions import Fraction

from specwriter.diagnostic import Evidence
from specwriter.model import Job
from specwriter.model.results import PayBand, Smoothness
from specwriter.quantity import UNITS, Interval, show, show_like
from specwriter.trade.formula import Formula
from specwriter.trade.pay_schedule import (
    Row,
    adds_percentages,
    in_order,
    pay_at,
    row_of,
    rows_at,
    steps,
)
from specwriter.worksheet.figure import Line
from specwriter.worksheet.scale import PERCENT
from specwriter.worksheet.sheet import Sheet, areas

PAY = Formula(
    text="pay of the row that holds for the index; on a line within a row that names two sums",
    source="arithmetic",
    validity="results rounded as the contract says; where two rows disagree nothing is computed",
)
STEP = Formula(
    text="pay at the end of a row less pay at the beginning of the next",
    source="arithmetic",
    validity="rows that pay in the same kind",
)


@dataclass(frozen=True, slots=True)
class _Schedule:
    """The bands of one area, the rows they make, and what they pay in."""

    ride: Smoothness
    bands: tuple[PayBand, ...]
    rows: list[Row]
    kind: str

    def written(self, row: Row) -> tuple[Evidence, ...]:
        """Index and pay of a row, as they stand in the job."""
        band, number = self.bands[row.number], row.number + 1
        return tuple(
            Evidence(path=band.path_to(key), label=f"{key} of row {number}", written=str(value))
            for key, value in (("index", band.index), ("pay", band.pay))
            if value is not None
        )

    def index(self, base: Fraction, row: Row) -> str:
        """An index as its row writes it."""
        sample = self.bands[row.number].index
        return show_like(base, sample) if sample else ""


def figures(job: Job) -> Iterator[Line]:
    """One line for each corner of a table that pays in one kind, and one for its largest step."""
    for area, sheet in areas(job):
        ride = area.smoothness
        if ride is None or ride.pay_adjustment is None or not ride.pay_adjustment.bands:
            continue
        bands = ride.pay_adjustment.bands
        kinds = {band.pay.dimension for band in bands if band.pay}
        if len(kinds) != 1 or not kinds <= {"percent", "money"}:
            yield sheet.waiting("pay by the index", "rows that pay in one kind")
            continue
        yield from _lines(sheet, _Schedule(ride, bands, _rows(bands), kinds.pop()))


def _rows(bands: tuple[PayBand, ...]) -> list[Row]:
    adds = adds_percentages(band.pay for band in bands)
    return in_order(
        [
            row_of(number, band.index, band.pay, band.action, adds=adds)
            for number, band in enumerate(bands)
            if band.index
        ]
    )


def _lines(sheet: Sheet, schedule: _Schedule) -> Iterator[Line]:
    for value in sorted(_corners(schedule.rows)):
        pay, holding = pay_at(schedule.rows, value), rows_at(schedule.rows, value)
        if pay is None:
            continue
        index = schedule.index(value, holding[0])
        inputs = [each for row in holding for each in schedule.written(row)]
        title = f"pay at {schedule.ride.index or 'an index'} {index}"
        yield _line(sheet, title, PAY, schedule.kind, _whole(pay, schedule.kind), inputs)
    falls = [step for step in steps(schedule.rows) if step.change]
    if falls:
        step = min(falls, key=lambda each: each.change)
        inputs = [*schedule.written(step.smoother), *schedule.written(step.rougher)]
        title = f"largest step of pay, at {schedule.index(step.index, step.rougher)}"
        yield _line(sheet, title, STEP, schedule.kind, step.change, inputs)


def _corners(rows: list[Row]) -> set[Fraction]:
    """The ends of all rows that pay: between them pay is level or runs on a line."""
    ends = (end for row in rows if row.pay for end in (row.index.low, row.index.high))
    return {end for end in ends if end}


def _whole(adjustment: Fraction, kind: str) -> Fraction:
    """What is paid: the share of the price, or the sum of money itself."""
    return 1 + adjustment if kind == "percent" else adjustment


def _line(
    sheet: Sheet, title: str, formula: Formula, kind: str, value: Fraction, inputs: list[Evidence]
) -> Line:
    line = sheet.of_span(title, formula, PERCENT, Interval(value, value), inputs)
    if kind == "percent":
        return line
    return replace(line, value=show(value, UNITS["$"], 2), low=value, high=value, unit="$")
