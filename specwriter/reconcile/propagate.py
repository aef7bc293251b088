"""Narrowing of all intervals, relation by relation, until nothing moves."""

from __future__ import annotations

from collections import deque
from collections.abc import Iterable, Sequence
from fractions import Fraction
from functools import lru_cache
from math import ceil, floor

from specwriter.quantity import Interval
from specwriter.reconcile.relation import ANY, Box, Relation
from specwriter.reconcile.requirement import Requirement
from specwriter.reconcile.variables import is_whole

STEPS = 40
"""Looks at each relation, on average; stopping early is sound, only less sharp."""
_FINE, _LONG = 10**18, 10**40
_WORTH = Fraction(1, 10**6)
"""A narrowing by a smaller share of the width is not followed up: it could go on for ever."""


def box_of(requirements: Iterable[Requirement], *, exact: bool = False) -> Box | None:
    """The intervals that the requirements state; ``None`` when two on one variable clash."""
    box: Box = {}
    for each in requirements:
        own = each.interval if exact else each.reading
        box[each.variable] = box.get(each.variable, ANY).meet(own)
    return None if any(interval.is_empty for interval in box.values()) else box


def propagate(
    box: Box | None, relations: Sequence[Relation], moved: str | None = None
) -> Box | None:
    """The narrowed box, or ``None`` when some variable is left without a value: a proof.

    ``moved`` names the one variable that has changed in a box that was narrowed before.
    """
    if box is None:
        return None
    now = dict(box)
    users = _users(tuple(relations))
    waiting = deque(relations if moved is None else users.get(moved, ()))
    queued = {id(each) for each in waiting}
    left = STEPS * len(relations)
    while waiting and left > 0:
        left -= 1
        relation = waiting.popleft()
        queued.discard(id(relation))
        for variable in relation.variables:
            before = now.get(variable, ANY)
            found = relation.shape.narrow(now, variable)
            if before.within(found):
                continue
            after = before.meet(_short(found))
            if is_whole(variable):
                after = _whole(after)
            if after.is_empty:
                return None
            now[variable] = after
            if not _is_worth(before, after):
                continue
            for each in users[variable]:
                if id(each) not in queued and (each is not relation or len(each.variables) > 2):
                    queued.add(id(each))
                    waiting.append(each)
    return now


@lru_cache(maxsize=256)
def _users(relations: tuple[Relation, ...]) -> dict[str, list[Relation]]:
    users: dict[str, list[Relation]] = {}
    for relation in relations:
        for variable in relation.variables:
            users.setdefault(variable, []).append(relation)
    return users


def _short(interval: Interval) -> Interval:
    """The interval with ends of bearable length, moved outwards by less than 1e-18."""
    if interval.is_point:
        return interval
    low, high = interval.low, interval.high
    return Interval(
        Fraction(floor(low * _FINE), _FINE) if low and low.denominator > _LONG else low,
        Fraction(ceil(high * _FINE), _FINE) if high and high.denominator > _LONG else high,
    )


def _whole(interval: Interval) -> Interval:
    """The whole numbers of an interval."""
    low, high = interval.low, interval.high
    return Interval(
        None if low is None else Fraction(ceil(low)),
        None if high is None else Fraction(floor(high)),
    )


def _is_worth(before: Interval, after: Interval) -> bool:
    if before.low is None or before.high is None or after.low is None or after.high is None:
        return True
    width = before.high - before.low
    return after.is_point or width - (after.high - after.low) > width * _WORTH
