"""The reach of a monotone function over intervals, with open ends."""

from __future__ import annotations

from fractions import Fraction

import pytest

from specwriter.quantity import Interval
from specwriter.worksheet.reach import reach

F = Fraction


def between(low: int | None, high: int | None) -> Interval:
    return Interval(None if low is None else F(low), None if high is None else F(high))


@pytest.mark.parametrize(
    ("interval", "expected"),
    [
        (between(2, 4), Interval(F(1, 4), F(1, 2))),
        (between(2, 2), Interval(F(1, 2), F(1, 2))),
        (between(2, None), Interval(None, F(1, 2))),
        (between(None, 2), Interval(F(1, 2), None)),
    ],
)
def test_an_open_end_opens_the_side_to_which_the_function_moves(
    interval: Interval, expected: Interval
) -> None:
    assert reach(lambda each: 1 / each, (interval,)) == expected


def test_two_arguments_meet_at_their_corners() -> None:
    assert reach(lambda a, b: a - b, (between(5, 7), between(1, 2))) == between(3, 6)
    assert reach(lambda a, b: a - b, (between(5, 7), between(None, 2))) == between(3, None)


def test_an_argument_that_does_not_matter_leaves_the_result_closed() -> None:
    assert reach(lambda a, b: a, (between(1, 2), between(1, None))) == between(1, 2)
