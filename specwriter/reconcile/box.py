"""Boxes: an interval for each variable, in exact arithmetic or in floating point."""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction
from math import ceil, floor

from specwriter.quantity import Interval
from specwriter.reconcile.relation import ANY, Box
from specwriter.reconcile.requirement import Requirement
from specwriter.reconcile.shape import in_floats


def rough(box: Box) -> Box:
    """The box in floating point: ten times as fast to narrow, and widened at each step so that
    nothing is lost. What it proves is proved; a solution in it is one within 1e-11."""
    return {name: in_floats(each) for name, each in box.items()}


def is_rough(box: Box) -> bool:
    """True for a box in floating point."""
    return any(isinstance(end, float) for each in box.values() for end in each)


def neat(interval: Interval) -> Interval:
    """Ends in floating point as the simple fractions that they stand for, for showing."""
    return Interval(*(None if end is None else _simple(end) for end in interval))


def _simple(end: Fraction | float) -> Fraction:
    near = Fraction(end).limit_denominator(10**6)
    return near if abs(near - Fraction(end)) <= Fraction(1, 10**10) else Fraction(end)


def box_of(requirements: Iterable[Requirement], *, exact: bool = False) -> Box | None:
    """The intervals that the requirements state; ``None`` when two on one variable clash."""
    box = _stated(requirements, exact=exact)
    return None if any(interval.is_empty for interval in box.values()) else box


def stated_apart(requirements: Iterable[Requirement]) -> frozenset[str]:
    """The first variable on which the requirements, with their rounding granted, clash."""
    box = _stated(requirements, exact=False)
    return frozenset([name for name, interval in box.items() if interval.is_empty][:1])


def _stated(requirements: Iterable[Requirement], *, exact: bool) -> Box:
    box: Box = {}
    for each in requirements:
        own = each.interval if exact else each.reading
        box[each.variable] = box.get(each.variable, ANY).meet(own)
    return box


def whole_numbers(interval: Interval) -> Interval:
    """The whole numbers of an interval."""
    low, high = interval
    return Interval(
        None if low is None else type(low)(ceil(low)),
        None if high is None else type(high)(floor(high)),
    )
