"""Laws of a pay schedule: rows that follow one another leave nothing out and nothing double."""

from __future__ import annotations

from fractions import Fraction
from itertools import pairwise
from random import Random

from hypothesis import given
from hypothesis import strategies as st

from specwriter.quantity import Interval
from specwriter.trade.pay_schedule import Row, gaps, pay_at, rounded, rows_at, shared, steps

STEP = Fraction(1, 10)
TENTHS = st.integers(min_value=1, max_value=2000)
ENDS = st.lists(TENTHS, min_size=1, max_size=6, unique=True).map(sorted)
SUMS = st.lists(st.integers(-600, 600), min_size=7, max_size=7)
ORDERS = st.randoms(use_true_random=False)


def table(ends: list[int], sums: list[int]) -> list[Row]:
    """Rows that begin one tenth above the end of the row before; open at both ends."""
    lows = [None, *((end + 1) * STEP for end in ends)]
    highs = [*(end * STEP for end in ends), None]
    return [
        Row(number=number, index=Interval(low, high), pay=(Fraction(pay), Fraction(pay)))
        for number, (low, high, pay) in enumerate(zip(lows, highs, sums, strict=False))
    ]


@given(ENDS, SUMS, ORDERS, TENTHS)
def test_every_reported_result_has_one_row_in_any_order_of_rows(
    ends: list[int], sums: list[int], order: Random, tenth: int
) -> None:
    rows = table(ends, sums)
    order.shuffle(rows)

    assert len(rows_at(rows, tenth * STEP)) == 1
    assert pay_at(rows, tenth * STEP) in {Fraction(each) for each in sums}
    assert list(shared(rows)) == []
    assert {gap.width for gap in gaps(rows)} <= {STEP}


@given(ENDS, SUMS)
def test_a_row_taken_out_leaves_its_place_without_pay(ends: list[int], sums: list[int]) -> None:
    rows = table(ends, sums)
    for row in rows[1:-1]:
        rest = [each for each in rows if each is not row]
        middle = row.index.low or Fraction(0)

        assert pay_at(rest, middle) is None
        assert any(gap.low < middle < gap.high for gap in gaps(rest))


@given(ENDS, SUMS)
def test_steps_add_up_to_the_change_from_the_smoothest_to_the_roughest(
    ends: list[int], sums: list[int]
) -> None:
    rows = table(ends, sums)

    assert sum(step.change for step in steps(rows)) == sums[len(rows) - 1] - sums[0]


@given(st.fractions(min_value=0, max_value=300), st.sampled_from([STEP, Fraction(1)]))
def test_rounding_moves_a_result_by_half_a_step_at_most(value: Fraction, step: Fraction) -> None:
    reported = rounded(value, step)

    assert (reported / step).denominator == 1
    assert abs(reported - value) <= step / 2


@given(TENTHS, TENTHS, st.integers(-600, 600), st.integers(0, 600))
def test_a_line_never_pays_more_at_the_rougher_end(
    low: int, width: int, least: int, fall: int
) -> None:
    ends = Interval(low * STEP, (low + width) * STEP)
    row = Row(number=0, index=ends, pay=(Fraction(least + fall), Fraction(least)))
    paid = [row.at((low + width * Fraction(part, 4)) * STEP) for part in range(5)]

    sums = [each for each in paid if each is not None]
    assert (sums[0], sums[-1]) == row.pay
    assert all(before >= after for before, after in pairwise(sums))
