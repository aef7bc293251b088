"""The values that a function takes over intervals: exact at the corners of a monotone function."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from fractions import Fraction
from itertools import product
from typing import Any

from specwriter.quantity import Interval


class NoValue(ArithmeticError):
    """A function has no value somewhere in the intervals: a zero below a fraction line."""


def reach(function: Callable[..., Any], intervals: Sequence[Interval]) -> Interval:
    """All values of a function that is monotone in each argument.

    An open end leaves the result open on the side to which the function moves there. Arguments
    are exact; what the function answers may be a ``float``. Raises ``NoValue``.
    """
    corners = list(product(*map(_ends, intervals)))
    try:
        values = [Fraction(function(*corner)) for corner in corners]
        moved = [Fraction(function(*corner)) for corner in _beyond(corners, intervals)]
    except (ArithmeticError, ValueError) as error:
        raise NoValue(str(error)) from error
    low, high = min(values), max(values)
    return Interval(
        None if min(moved, default=low) < low else low,
        None if max(moved, default=high) > high else high,
    )


def _beyond(
    corners: Sequence[tuple[Fraction, ...]], intervals: Sequence[Interval]
) -> list[tuple[Fraction, ...]]:
    """Every corner with one argument moved on towards its open end."""
    steps = [
        (index, factor)
        for index, interval in enumerate(intervals)
        for end, factor in ((interval.high, Fraction(2)), (interval.low, Fraction(1, 2)))
        if end is None
    ]
    return [
        (*corner[:index], corner[index] * factor, *corner[index + 1 :])
        for corner in corners
        for index, factor in steps
    ]


def _ends(interval: Interval) -> tuple[Fraction, ...]:
    ends = {end for end in (interval.low, interval.high) if end is not None}
    return tuple(sorted(ends)) or (Fraction(1),)
