"""Narrowing of all intervals, relation by relation, until nothing moves."""

from __future__ import annotations

from collections import deque
from collections.abc import Iterable, Sequence
from dataclasses import replace
from fractions import Fraction
from functools import lru_cache
from math import ceil, floor

from specwriter.quantity import Interval
from specwriter.reconcile.relation import ANY, Box, Relation
from specwriter.reconcile.requirement import Requirement
from specwriter.reconcile.shape import in_floats
from specwriter.reconcile.variables import is_whole

STEPS = 40
"""Looks at each relation, on average; stopping early is sound, only less sharp."""
_ROUNDING, _TINY = 1e-12, 1e-15
_FINE, _LONG = 10**18, 10**40
_WORTH = 10**6
"""A narrowing by less than one part in so many is not followed up: it could go on for ever."""
_LARGEST = 10**12
"""Nothing on a road is so large in its base unit; a range without an upper end that runs away
past it, each round by the same factor, is empty."""
FAR = Fraction(1000)
"""In base units; where nothing is found nearer, it is asked whether anything lies beyond."""


def rough(box: Box) -> Box:
    """The box in floating point: ten times as fast to narrow, and widened at each step so that
    nothing is lost. What it proves is proved; a solution in it is one within 1e-11."""
    return {name: in_floats(each) for name, each in box.items()}


@lru_cache(maxsize=2048)
def _floating(relation: Relation) -> Relation:
    """The relation with numbers in floating point: mixed with fractions they are as slow."""
    return replace(relation, shape=relation.shape.floating())


@lru_cache(maxsize=256)
def _all_floating(relations: tuple[Relation, ...]) -> tuple[Relation, ...]:
    return tuple(_floating(each) for each in relations)


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
    box: Box = {}
    for each in requirements:
        own = each.interval if exact else each.reading
        box[each.variable] = box.get(each.variable, ANY).meet(own)
    return None if any(interval.is_empty for interval in box.values()) else box


def propagate(
    box: Box | None, relations: Sequence[Relation], changed: str | None = None
) -> Box | None:
    """The narrowed box, or ``None`` when some variable is left without a value: a proof.

    Where only one variable was ``changed`` since the box was narrowed, the others need no look.
    """
    if box is None:
        return None
    used, anything = tuple(relations), ANY
    if is_rough(box):
        used, anything = _all_floating(used), in_floats(ANY)
    users = users_of(used)
    now = dict.fromkeys(users, anything) | box
    waiting = deque(used if changed is None else users.get(changed, ()))
    queued = {id(each) for each in waiting}
    left = STEPS * len(used)
    while waiting and left > 0:
        left -= 1
        relation = waiting.popleft()
        queued.discard(id(relation))
        for variable in relation.variables:
            before = now[variable]
            found = relation.shape.narrow(now, variable)
            if before.within(found) or before.within(found := _short(found)):
                continue
            after = before.meet(found)
            if is_whole(variable):
                after = whole_numbers(after)
            if after.is_empty or (after.low or 0) > _LARGEST:
                return None
            now[variable] = after
            if not _is_worth(before, after):
                continue
            for each in users[variable]:
                if id(each) not in queued and (each is not relation or len(each.variables) > 2):
                    queued.add(id(each))
                    waiting.append(each)
    return now


def bounded(box: Box | None, relations: Sequence[Relation]) -> Box | None:
    """The narrowed box, with an upper end for each variable whose far values are refuted.

    A bound that feeds on itself (s is at most 1 + s / 100) is not found without one to begin with.
    """
    for name, interval in (box or {}).items():
        if box is None or interval.high is not None or box[name].high is not None:
            continue
        far = max(interval.low or Fraction(0), FAR)
        if propagate({**box, name: Interval(far, None)}, relations, name) is None:
            box = propagate({**box, name: Interval(box[name].low, far)}, relations, name)
    return box


@lru_cache(maxsize=256)
def users_of(relations: tuple[Relation, ...]) -> dict[str, list[Relation]]:
    """For each variable the relations that speak of it."""
    users: dict[str, list[Relation]] = {}
    for relation in relations:
        for variable in relation.variables:
            users.setdefault(variable, []).append(relation)
    return users


def _short(interval: Interval) -> Interval:
    """The interval with ends of bearable length, moved outwards by less than 1e-18; ends in
    floating point are moved outwards by more than the rounding of the arithmetic."""
    low, high = interval
    if isinstance(low, float) or isinstance(high, float):
        return Interval(
            None if low is None else low - abs(low) * _ROUNDING - _TINY,
            None if high is None else high + abs(high) * _ROUNDING + _TINY,
        )
    if low is not None and low == high:
        return interval
    return Interval(
        Fraction(floor(low * _FINE), _FINE) if low and low.denominator > _LONG else low,
        Fraction(ceil(high * _FINE), _FINE) if high and high.denominator > _LONG else high,
    )


def whole_numbers(interval: Interval) -> Interval:
    """The whole numbers of an interval."""
    low, high = interval
    return Interval(
        None if low is None else type(low)(ceil(low)),
        None if high is None else type(high)(floor(high)),
    )


def narrows(before: Interval, found: Interval) -> bool:
    """True when meeting ``found`` leaves nothing, or less by more than a small share."""
    after = before.meet(found)
    return not before.within(found) and (after.is_empty or _is_worth(before, after))


def _is_worth(before: Interval, after: Interval) -> bool:
    """True when an end moved by more than a small share of the width, or of itself."""
    if after.is_point or (before.low is None) != (after.low is None):
        return True
    if before.high is None or after.high is None or before.low is None or after.low is None:
        if (before.high is None) != (after.high is None):
            return True
        low, was = after.low or Fraction(0), before.low or Fraction(0)
        return (low - was) * _WORTH > abs(low)
    width = before.high - before.low
    return (width - (after.high - after.low)) * _WORTH > width
