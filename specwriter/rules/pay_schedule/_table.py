"""The pay table of an area as a schedule, and how a finding names its rows."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from fractions import Fraction

from specwriter.diagnostic import Evidence
from specwriter.model import Area, Job
from specwriter.model.results import PayAdjustment, PayBand, Smoothness
from specwriter.quantity import Quantity, show_like
from specwriter.rules.rule import evidence, given
from specwriter.trade.pay_schedule import Gap, Row, Step, adds_percentages, row_of

NEEDS = ("smoothness.pay_adjustment.bands",)


@dataclass(frozen=True, slots=True, kw_only=True)
class Table:
    """A pay table with its rows as exact intervals (m/m); rows without an index are left out."""

    area: Area
    ride: Smoothness
    pay: PayAdjustment
    bands: tuple[PayBand, ...]
    rows: tuple[Row, ...]
    adds: bool
    """True where percentages seem to be added to the price instead of being shares of it."""

    @property
    def indexes(self) -> list[Quantity]:
        """The written index of every row."""
        return [given(self.bands[row.number].index) for row in self.rows]

    @property
    def finest(self) -> Fraction:
        """The finest step in which the ends of the rows are written."""
        return min(finest(index) for index in self.indexes)

    @property
    def step(self) -> Fraction:
        """The step of a reported result: as stated, else the finest step of the table."""
        stated = self.ride.reported_to
        return (stated.nominal if stated else None) or self.finest

    def same_kind(self, step: Step) -> bool:
        """True where two rows can be held against each other: one kind of pay, or full pay."""
        first, second = (self.bands[row.number].pay for row in (step.smoother, step.rougher))
        same = given(first).dimension == given(second).dimension
        return same or 0 in (step.before, step.after)

    def rounding(self, gap: Gap) -> Fraction:
        """What the ends of a gap may be off where its two rows are written in two units."""
        ends = [given(self.bands[row.number].index) for row in (gap.smoother, gap.rougher)]
        if ends[0].unit == ends[1].unit:
            return Fraction(0)
        return sum((max(amount.slack for amount in end.amounts) for end in ends), Fraction(0))

    def kind(self, row: Row) -> str:
        """What the row pays in: ``percent``, ``money``, ..."""
        return given(self.bands[row.number].pay).dimension

    def written(self, base: Fraction, row: Row) -> str:
        """A computed index, written the way the row is."""
        return show_like(base, given(self.bands[row.number].index))

    def at(self, rows: Iterable[Row], key: str = "index") -> list[Evidence]:
        """The rows as evidence, each once."""
        found = {row.number: self.bands[row.number] for row in rows}
        return [evidence(band, key, f"{key} of row {number + 1}") for number, band in found.items()]


def tables(job: Job) -> Iterator[Table]:
    """Each area with its pay table; only for rules that need the bands."""
    for area in job.areas.values():
        ride = given(area.smoothness)
        yield table_of(area, ride, given(ride.pay_adjustment))


def table_of(area: Area, ride: Smoothness, pay: PayAdjustment) -> Table:
    """The bands of one statement as a schedule."""
    adds = adds_percentages(band.pay for band in pay.bands)
    rows = tuple(
        row_of(number, band.index, band.pay, band.action, adds=adds)
        for number, band in enumerate(pay.bands)
        if band.index
    )
    return Table(area=area, ride=ride, pay=pay, bands=pay.bands, rows=rows, adds=adds)


def finest(index: Quantity) -> Fraction:
    """The finest step in which a written value is given, in its base unit."""
    return min(amount.step * amount.unit.factor for amount in index.amounts)
