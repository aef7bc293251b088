"""Narrowing of all intervals, relation by relation, until nothing moves."""

from __future__ import annotations

from collections import deque
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from fractions import Fraction
from functools import cached_property, lru_cache
from math import ceil, floor

from specwriter.quantity import Interval
from specwriter.reconcile.box import is_rough, rough, whole_numbers
from specwriter.reconcile.relation import ANY, Box, Relation
from specwriter.reconcile.shape import Shape, in_floats
from specwriter.reconcile.variables import is_whole

STEPS, FOLLOWED = 40, 5
"""Looks at each relation, on average, in a whole box and where little has changed since; stopping
early is sound, only less sharp."""
_ROUNDING, _TINY = 1e-12, 1e-15
_FINE, _LONG = 10**18, 10**40
_WORTH, _WORTH_FOLLOWED = 10**6, 30
"""A narrowing by less than one part in so many is not followed up: it could go on for ever."""
_LARGEST = 10**12
"""Nothing on a road is so large in its base unit; a range without an upper end that runs away
past it, each round by the same factor, is empty."""
FAR = Fraction(1000)
"""In base units; where nothing is found nearer, it is asked whether anything lies beyond."""
_ANY = in_floats(ANY)

Step = tuple[int, str]
"""The place of a relation in its list, and a variable that it narrows."""


@dataclass(frozen=True, slots=True)
class Refutation:
    """Variables and relations from which a contradiction follows, without the others."""

    variables: frozenset[str]
    relations: tuple[Relation, ...]


class Narrowing:
    """A box narrowed by relations until nothing moves.

    Floating point finds the steps that narrow, and ``left`` is what is left of the box in floating
    point, widened by its rounding. Only these steps are made in exact arithmetic, for ``exact``,
    when somebody asks. ``None`` is a variable without a value: in exact arithmetic a proof.
    ``ended`` is false where things still moved when the looks were used up: then, most often,
    some ranges run away because their relations cannot hold together.
    """

    def __init__(
        self, box: Box, relations: Sequence[Relation], changed: Iterable[str] | None = None
    ) -> None:
        """Where only some variables were ``changed`` since the box was narrowed, the others need
        no look."""
        self.box = box
        self.relations = tuple(relations)
        self.steps: list[Step] = []
        self.left, self.ended = _searched(rough(box), self.relations, changed, self.steps)

    @cached_property
    def exact(self) -> Box | None:
        """What is left of the box in exact arithmetic."""
        return _made(self.box, self.relations, self.steps)

    @property
    def because(self) -> Refutation | None:
        """What a proof rests on that nothing is left."""
        if self.left is not None or self.exact is not None:
            return None
        names, through = {self.steps[-1][1]}, dict[Relation, None]()
        for place, variable in reversed(self.steps):
            if variable in names:
                names.update(self.relations[place].variables)
                through |= dict.fromkeys(self.relations[place].parts or (self.relations[place],))
        return Refutation(frozenset(names), tuple(through))


def propagate(
    box: Box | None, relations: Sequence[Relation], changed: Iterable[str] | None = None
) -> Box | None:
    """The narrowed box, in the arithmetic that it is in; ``None`` when some variable is left
    without a value."""
    if box is None:
        return None
    if is_rough(box):
        return _searched(box, tuple(relations), changed, [])[0]
    return Narrowing(box, relations, changed).exact


def _searched(
    box: Box, relations: tuple[Relation, ...], changed: Iterable[str] | None, steps: list[Step]
) -> tuple[Box | None, bool]:
    """A box in floating point narrowed, the steps that narrowed it, and whether it came to an
    end."""
    shapes, users = _prepared(relations)
    now = dict.fromkeys(users, _ANY) | box
    waiting = deque(range(len(shapes)))
    if changed is not None:
        waiting = deque({place: None for name in changed for place in users.get(name, ())})
    queued = set(waiting)
    left = (STEPS if changed is None else FOLLOWED) * len(shapes)
    worth = _WORTH if changed is None else _WORTH_FOLLOWED
    while waiting and left > 0:
        left -= 1
        place = waiting.popleft()
        queued.discard(place)
        shape = shapes[place]
        for variable in shape.variables:
            before = now[variable]
            found = shape.narrow(now, variable)
            if before.within(found) or before.within(found := _short(found)):
                continue
            steps.append((place, variable))
            after = _met(before, found, variable)
            if after is None:
                return None, True
            now[variable] = after
            if not _is_worth(before, after, worth):
                continue
            for each in users[variable]:
                if each not in queued and (each != place or len(shape.variables) > 2):
                    queued.add(each)
                    waiting.append(each)
    return now, not waiting


def _made(box: Box, relations: Sequence[Relation], steps: Iterable[Step]) -> Box | None:
    """The steps made one after the other in exact arithmetic."""
    now = dict(box)
    for place, variable in steps:
        before = now.get(variable, ANY)
        after = _met(before, _short(relations[place].shape.narrow(now, variable)), variable)
        if after is None:
            return None
        now[variable] = after
    return now


def _met(before: Interval, found: Interval, variable: str) -> Interval | None:
    """What two ranges leave of a variable; ``None`` for nothing."""
    after = before.meet(found)
    if is_whole(variable):
        after = whole_numbers(after)
    return None if after.is_empty or (after.low or 0) > _LARGEST else after


def bounded(box: Box | None, relations: Sequence[Relation]) -> Box | None:
    """The narrowed box, with an upper end for each variable whose far values are refuted.

    A bound that feeds on itself (s is at most 1 + s / 100) is not found without one to begin with.
    """
    for name, interval in (box or {}).items():
        if box is None or interval.high is not None or box[name].high is not None:
            continue
        far = max(interval.low or Fraction(0), FAR)
        if propagate({**box, name: Interval(far, None)}, relations, (name,)) is None:
            box = propagate({**box, name: Interval(box[name].low, far)}, relations, (name,))
    return box


@lru_cache(maxsize=256)
def _prepared(
    relations: tuple[Relation, ...],
) -> tuple[tuple[Shape, ...], dict[str, list[int]]]:
    """The shapes with their numbers in floating point, and for each variable the places of the
    relations that speak of it."""
    return tuple(_floating(each) for each in relations), users_of(relations)


@lru_cache(maxsize=2048)
def _floating(relation: Relation) -> Shape:
    """Numbers in floating point: mixed with fractions they are as slow."""
    return relation.shape.floating()


def users_of(relations: Sequence[Relation]) -> dict[str, list[int]]:
    """For each variable the places of the relations that speak of it."""
    users: dict[str, list[int]] = {}
    for place, relation in enumerate(relations):
        for variable in relation.variables:
            users.setdefault(variable, []).append(place)
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


def narrows(before: Interval, found: Interval) -> bool:
    """True when meeting ``found`` leaves nothing, or less by more than a small share."""
    after = before.meet(found)
    return not before.within(found) and (after.is_empty or _is_worth(before, after))


def _is_worth(before: Interval, after: Interval, worth: int = _WORTH) -> bool:
    """True when an end moved by more than a small share of the width, or of itself."""
    if after.is_point or (before.low is None) != (after.low is None):
        return True
    if before.high is None or after.high is None or before.low is None or after.low is None:
        if (before.high is None) != (after.high is None):
            return True
        low, was = after.low or Fraction(0), before.low or Fraction(0)
        return (low - was) * worth > abs(low)
    width = before.high - before.low
    return (width - (after.high - after.low)) * worth > width
