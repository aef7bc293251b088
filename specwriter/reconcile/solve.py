"""Deciding a system: a proof that nothing solves it, or one exact solution.

Propagation refutes; fixing one variable after another at an end of its interval finds. Where
neither decides, the widest interval is halved and both halves are tried, up to a bound.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction
from math import floor
from typing import Literal

from specwriter.quantity import Interval
from specwriter.reconcile.implied import clashing_sum, with_implied
from specwriter.reconcile.propagate import (
    FAR,
    bounded,
    box_of,
    is_rough,
    propagate,
    rough,
    users_of,
    whole_numbers,
)
from specwriter.reconcile.relation import ANY, Box, Linear, Relation
from specwriter.reconcile.requirement import Requirement
from specwriter.reconcile.shape import is_settled
from specwriter.reconcile.variables import is_outcome, is_whole

BUDGET = 400
"""Propagations spent on one question before it is left undecided."""
FIXES = 60
"""Of these, the ones spent on looking for a solution in one box."""

Point = Mapping[str, Fraction]
Standing = Literal["met", "refuted", "open"]
"""A choice is found; none is possible; or neither is decided."""


@dataclass(frozen=True, slots=True)
class Answer:
    """``solution`` when there is one; ``refuted`` when there is none; neither: not decided."""

    solution: Point | None = None
    refuted: bool = False


def solve(
    requirements: Sequence[Requirement],
    relations: Sequence[Relation],
    *,
    exact: bool = False,
    held: Mapping[str, Interval] | None = None,
    proves: bool = True,
) -> Answer:
    """Whether some choice of values meets all requirements and relations.

    ``exact`` grants no rounding; ``held`` narrows variables further. Without ``proves`` a choice
    is looked for and no proof that there is none.
    """
    box = box_of(requirements, exact=exact)
    used = connected({*(each.variable for each in requirements), *(held or ())}, relations)
    if box is not None and held:
        for name, to in held.items():
            own = box.get(name, ANY).meet(to)
            box[name] = whole_numbers(own) if is_whole(name) else own
        if any(each.is_empty for each in box.values()):
            box = None
    return _Search(used).decide(box, proves=proves)


def seems_solvable(
    requirements: Sequence[Requirement], relations: Sequence[Relation], *, exact: bool
) -> bool:
    """True when floating point finds a choice that meets everything; quick, for the usual case
    in which nothing is wrong. False says nothing."""
    box = box_of(requirements, exact=exact)
    if box is None:
        return False
    return _Search(relations).decide(rough(box)).solution is not None


def is_refuted(requirements: Sequence[Requirement], relations: Sequence[Relation]) -> bool:
    """True when the requirements, with their rounding granted, are proved impossible.

    Where floating point finds a choice that meets them all, no proof is looked for.
    """
    return standing(requirements, relations) == "refuted"


def standing(requirements: Sequence[Requirement], relations: Sequence[Relation]) -> Standing:
    """Whether the requirements, with their rounding granted, can be met; tried in floats first."""
    used = connected((each.variable for each in requirements), relations)
    if seems_solvable(requirements, used, exact=False):
        return "met"
    answer = _Search(used).decide(box_of(requirements), seeks=False)
    return "refuted" if answer.refuted else "open" if answer.solution is None else "met"


def connected(variables: Iterable[str], relations: Sequence[Relation]) -> tuple[Relation, ...]:
    """The relations that the variables reach; the others cannot matter.

    Nor can one that ends in a variable of which nothing else speaks, if some value always fits
    or if that variable is a result for which nobody asks.
    """
    stated = set(variables)
    speaking = [one for one in relations if not one.about or stated.intersection(one.about)]
    users = users_of(tuple(speaking))
    reached: set[int] = set()
    waiting = list(stated)
    seen = set(stated)
    while waiting:
        for one in users.get(waiting.pop(), ()):
            if id(one) not in reached:
                reached.add(id(one))
                fresh = [name for name in one.variables if name not in seen]
                seen.update(fresh)
                waiting += fresh
    used = [one for one in speaking if id(one) in reached]
    return _asked_for(used, stated)


def _asked_for(used: list[Relation], stated: set[str]) -> tuple[Relation, ...]:
    while True:
        counts = Counter(name for one in used for name in one.variables)
        free = {name for name, count in counts.items() if count == 1 and name not in stated}
        kept = [
            one
            for one in used
            if not free.intersection(one.shape.always_fitting)
            and not (one.assures and one.output in free)
        ]
        if len(kept) == len(used):
            return tuple(kept)
        used = kept


class _Search:
    """One bounded search."""

    def __init__(self, relations: Sequence[Relation]) -> None:
        self.relations = tuple(relations)
        self.names = dict.fromkeys(name for each in relations for name in each.variables)
        computed = {name for each in relations for name in each.shape.only_computed}
        computed |= {name for name in self.names if is_outcome(name)}
        free = sorted((name for name in self.names if name not in computed), key=_whole_first)
        self.orders = tuple([*order, *computed] for order in (free, free[::-1]))
        self.bent = [
            name
            for name in self.names
            if any(
                name in each.variables for each in relations if not isinstance(each.shape, Linear)
            )
        ]
        self.left = BUDGET

    def decide(self, start: Box | None, *, seeks: bool = True, proves: bool = True) -> Answer:
        """The whole box first; then, with what its relations imply, one half after the other.

        Without ``seeks`` no solution is looked for in the whole box, as where floating point has
        looked there already.
        """
        box = self._narrow(start)
        if box is None:
            return Answer(refuted=True)
        point = self._found_near(box) if seeks else None
        if point is not None or is_rough(box) or not proves:
            return Answer(solution=point)
        self.relations = with_implied(box, self.relations)
        box = bounded(self._narrow(box), self.relations)
        if box is None:
            return Answer(refuted=True)
        whole, boxes = box, [box]
        while boxes and self.left > 0:
            box = self._narrow(boxes.pop(0))
            if box is None or clashing_sum(box, self.relations) is not None:
                continue
            if (point := self._point_of(box, len(self.names))) is not None:
                return Answer(solution=point)
            halves = _halves(box, whole, self.bent)
            if not halves:
                return Answer()
            boxes += halves
        return Answer(refuted=not boxes)

    def _found_near(self, box: Box) -> Point | None:
        return self._point_of(box, FIXES) or self._point_of(self._near(box), FIXES)

    def _near(self, box: Box) -> Box | None:
        """The box without what lies far off, which starts bounds that feed on themselves; none
        where every variable ends anyway."""
        open_ = [name for name in self.names if box.get(name, ANY).high is None]
        ends = {name: box.get(name, ANY).meet(Interval(None, FAR)) for name in open_}
        return self._narrow({**box, **ends}) if open_ else None

    def _point_of(self, box: Box | None, fixes: int) -> Point | None:
        """A solution in the box, if so many fixes find one."""
        if box is None:
            return None
        for order in self.orders:
            self.fixes = fixes
            if (point := self._fix(box, order)) is not None:
                return point
        return None

    def _narrow(self, box: Box | None, changed: str | None = None) -> Box | None:
        self.left -= 1
        return propagate(box, self.relations, changed)

    def _fix(self, box: Box, order: list[str]) -> Point | None:
        """A point of the box: each variable in turn at an end of what the others leave it."""
        open_ = [name for name in order if not is_settled(box.get(name, ANY))]
        if not open_:
            return {
                name: interval.low for name, interval in box.items() if interval.low is not None
            }
        name = open_[0]
        for value in _candidates(name, box.get(name, ANY)):
            if self.left <= 0 or self.fixes <= 0:
                return None
            self.fixes -= 1
            fixed = self._narrow({**box, name: Interval(value, value)}, name)
            if fixed is not None and (point := self._fix(fixed, order)) is not None:
                return point
        return None


def _whole_first(name: str) -> bool:
    return not is_whole(name)


def _candidates(name: str, interval: Interval) -> tuple[Fraction, ...]:
    """Values to try: both ends; something above the lower end where there is no upper one."""
    low, high = interval.low or Fraction(0), interval.high
    if isinstance(low, float) and high is not None:
        # The ends were moved outwards by the rounding: a hair inside lies what they stand for.
        hair = abs(high) * 1e-11 + 1e-14
        return (high, low) if high - low < 4 * hair else (high - hair, low + hair)
    if high is None:
        beyond = low + 1 if is_whole(name) else 2 * low if low else Fraction(1, 100)
        return (beyond, low)
    return (high, low)


def _halves(box: Box, whole: Box, names: Iterable[str]) -> list[Box]:
    """The box cut in two at the variable of these that keeps most of its range in the whole."""
    shares = {each: _share(box.get(each, ANY), whole.get(each, ANY)) for each in names}
    name = max(shares, key=lambda each: shares[each], default="")
    if not shares.get(name):
        return []
    low, high = box.get(name, ANY)
    low = low or Fraction(0)
    middle = 2 * low if high is None else (low + high) / 2
    above = middle
    if is_whole(name):
        middle, above = Fraction(floor(middle)), Fraction(floor(middle) + 1)
    return [{**box, name: Interval(low, middle)}, {**box, name: Interval(above, high)}]


def _share(interval: Interval, whole: Interval) -> Fraction:
    """What is left of a range. Of one without an end the half that ends counts by its own size,
    and the other comes after the wide ones; it is cut at twice its lower end."""
    low, high = interval
    if high is None or low is None:
        return Fraction(bool(low), 2)
    if low == high:
        return Fraction(0)
    if whole.high is None or whole.low is None:
        return (high - low) / high
    return (high - low) / (whole.high - whole.low)
