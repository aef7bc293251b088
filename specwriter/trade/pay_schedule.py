"""A pay schedule as a function of the measured index: what it pays, and where it says nothing.

A schedule is a sequence of rows. A row holds for an interval of the index, both ends included,
and gives a pay adjustment: 0 is the full price, a bonus is positive, a deduction negative. The
index may be in any unit and the adjustment in money or as a share of the price, as long as the
rows agree. All arithmetic is exact; it needs no source.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction
from itertools import combinations, pairwise
from math import floor

from specwriter.quantity import Amount, Interval, Quantity

_LARGEST_ADDITION = Fraction(1, 2)
"""A table whose percentages all lie below this adds them to the price (common practice)."""

_NO_ACTION = ("", "none", "no action", "nothing")


@dataclass(frozen=True, slots=True, kw_only=True)
class Row:
    """One row; ``number`` is its place in the contract, counted from 0.

    ``pay`` holds the adjustments at the smooth and at the rough end of ``index``: equal where the
    row pays one sum, linear between them otherwise, ``None`` where the row pays nothing stated.
    """

    number: int
    index: Interval
    pay: tuple[Fraction, Fraction] | None = None
    corrective: bool = False
    """True where the row asks for corrective work."""

    @property
    def is_sloped(self) -> bool:
        """True where pay changes within the row."""
        return self.pay is not None and self.pay[0] != self.pay[1]

    def at(self, value: Fraction) -> Fraction | None:
        """The adjustment at an index inside the row; ``None`` where the row gives none."""
        low, high = self.index.low, self.index.high
        if self.pay is None or not self.is_sloped:
            return self.pay and self.pay[0]
        if low is None or high is None or low == high:
            return None  # a slope needs two ends to run between
        return self.pay[0] + (self.pay[1] - self.pay[0]) * (value - low) / (high - low)


@dataclass(frozen=True, slots=True, kw_only=True)
class Gap:
    """A stretch between two neighbouring rows that belongs to neither; its ends do belong."""

    smoother: Row
    rougher: Row
    low: Fraction
    high: Fraction

    @property
    def width(self) -> Fraction:
        """How much of the index has no row."""
        return self.high - self.low


@dataclass(frozen=True, slots=True, kw_only=True)
class Shared:
    """What two rows both hold for: a stretch, or one value where their ends meet."""

    smoother: Row
    rougher: Row
    index: Interval


@dataclass(frozen=True, slots=True, kw_only=True)
class Step:
    """The change of pay from one row to the next, at the smooth end of the rougher row."""

    smoother: Row
    rougher: Row
    index: Fraction
    before: Fraction
    after: Fraction

    @property
    def change(self) -> Fraction:
        """How much more (positive) or less the rougher row pays."""
        return self.after - self.before


def row_of(
    number: int, index: Quantity, pay: Quantity | None, action: str | None, *, adds: bool
) -> Row:
    """A written row; ``adds`` says that percentages are added to the price (see below)."""
    return Row(
        number=number,
        index=index.interval,
        pay=_pay(pay, adds=adds) if pay else None,
        corrective=(action or "").strip(" .").lower() not in _NO_ACTION,
    )


def _pay(pay: Quantity, *, adds: bool) -> tuple[Fraction, Fraction]:
    """The adjustment at both ends; within a written range pay falls from the smooth end."""
    ends = [_adjustment(amount, adds=adds) for amount in pay.amounts]
    return (max(ends), min(ends)) if pay.form == "range" else (ends[0], ends[0])


def _adjustment(amount: Amount, *, adds: bool) -> Fraction:
    return amount.base if amount.unit.dimension != "percent" or adds else amount.base - 1


def adds_percentages(pays: Iterable[Quantity | None]) -> bool:
    """True where every percentage of a table is too small for a share of the price."""
    shares = [
        amount.base for pay in pays if pay and pay.dimension == "percent" for amount in pay.amounts
    ]
    return any(shares) and all(abs(each) < _LARGEST_ADDITION for each in shares)


def in_order(rows: Sequence[Row]) -> list[Row]:
    """The rows from smooth to rough: by their low ends, then by their high ends."""
    return sorted(rows, key=_ends)


def _ends(row: Row) -> tuple[bool, Fraction, bool, Fraction]:
    low, high = row.index.low, row.index.high
    return low is not None, low or Fraction(0), high is None, high or Fraction(0)


def rounded(value: Fraction, step: Fraction) -> Fraction:
    """The index as it is reported: the nearest multiple of ``step``, halves upwards."""
    return floor(value / step + Fraction(1, 2)) * step


def rows_at(rows: Sequence[Row], value: Fraction) -> list[Row]:
    """Every row that holds for the value: none in a gap, several where rows overlap."""
    return [row for row in rows if value in row.index]


def pay_at(rows: Sequence[Row], value: Fraction) -> Fraction | None:
    """The adjustment at a value; ``None`` where no row pays there or the rows disagree."""
    sums = {row.at(value) for row in rows_at(rows, value) if row.pay is not None}
    return sums.pop() if len(sums) == 1 else None


def gaps(rows: Sequence[Row]) -> Iterator[Gap]:
    """The stretches between rows that no row holds for, smooth to rough."""
    reach: Row | None = None
    for row in in_order(rows):
        low = row.index.low
        if reach and reach.index.high is not None and low is not None and low > reach.index.high:
            yield Gap(smoother=reach, rougher=row, low=reach.index.high, high=low)
        reach = row if reach is None or _reaches_further(row, reach) else reach


def _reaches_further(row: Row, other: Row) -> bool:
    if other.index.high is None:
        return False
    return row.index.high is None or row.index.high > other.index.high


def shared(rows: Sequence[Row]) -> Iterator[Shared]:
    """What any two rows both hold for."""
    for smoother, rougher in combinations(in_order(rows), 2):
        both = smoother.index.meet(rougher.index)
        if not both.is_empty:
            yield Shared(smoother=smoother, rougher=rougher, index=both)


def steps(rows: Sequence[Row]) -> Iterator[Step]:
    """The change of pay from each paying row to the next paying row."""
    paying = [row for row in in_order(rows) if row.pay is not None]
    for smoother, rougher in pairwise(paying):
        low = rougher.index.low
        if low is not None and smoother.pay and rougher.pay:
            yield Step(
                smoother=smoother,
                rougher=rougher,
                index=low,
                before=smoother.pay[1],
                after=rougher.pay[0],
            )
