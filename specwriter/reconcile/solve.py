"""Deciding a system: a proof that nothing solves it, or one exact solution.

Propagation refutes; fixing one variable after another at an end of its interval finds. Where
neither decides, the widest interval is halved and both halves are tried, up to a bound.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction

from specwriter.quantity import Interval
from specwriter.reconcile.propagate import box_of, propagate
from specwriter.reconcile.relation import ANY, Box, Relation
from specwriter.reconcile.requirement import Requirement

BUDGET = 400
"""Propagations spent on one question before it is left undecided."""

Point = Mapping[str, Fraction]


@dataclass(frozen=True, slots=True)
class Answer:
    """``solution`` when there is one; ``refuted`` when there is none; neither: not decided."""

    solution: Point | None = None
    refuted: bool = False


def solve(
    requirements: Sequence[Requirement], relations: Sequence[Relation], *, exact: bool = False
) -> Answer:
    """Whether some choice of values meets all requirements and relations."""
    used = connected(requirements, relations)
    return _Search(used).decide(box_of(requirements, exact=exact))


def is_reached(
    point: Point, requirements: Sequence[Requirement], relations: Sequence[Relation]
) -> bool:
    """True when a choice that meets everything as written takes the values of ``point``."""
    box = box_of(requirements, exact=True)
    if box is None:
        return False
    held = {name: box.get(name, ANY).meet(Interval(at, at)) for name, at in point.items()}
    used = connected(requirements, relations)
    return _Search(used).decide({**box, **held}).solution is not None


def is_refuted(requirements: Sequence[Requirement], relations: Sequence[Relation]) -> bool:
    """True when the requirements, with their rounding granted, are proved impossible."""
    return solve(requirements, relations).refuted


def connected(
    requirements: Sequence[Requirement], relations: Sequence[Relation]
) -> tuple[Relation, ...]:
    """The relations that the stated variables reach; the others cannot matter."""
    known = {each.variable for each in requirements}
    used: list[Relation] = []
    rest = list(relations)
    while found := [one for one in rest if known.intersection(one.variables)]:
        used += found
        rest = [one for one in rest if one not in found]
        known.update(name for one in found for name in one.variables)
    return tuple(used)


class _Search:
    """One bounded search."""

    def __init__(self, relations: Sequence[Relation]) -> None:
        self.relations = relations
        names = dict.fromkeys(name for each in relations for name in each.variables)
        self.order = list(names)
        self.left = BUDGET

    def decide(self, start: Box | None) -> Answer:
        """Breadth-first over halves of the box."""
        boxes = [start]
        while boxes:
            box = self._narrow(boxes.pop(0))
            if box is None:
                continue
            for order in (self.order, self.order[::-1]):
                if (point := self._fix(box, order)) is not None:
                    return Answer(solution=point)
            halves = _halves(box)
            if self.left <= 0 or not halves:
                return Answer()
            boxes += halves
        return Answer(refuted=True)

    def _narrow(self, box: Box | None) -> Box | None:
        self.left -= 1
        return propagate(box, self.relations)

    def _fix(self, box: Box, order: list[str]) -> Point | None:
        """A point of the box: each variable in turn at an end of what the others leave it."""
        open_ = [name for name in order if not box.get(name, ANY).is_point]
        if not open_:
            return {
                name: interval.low for name, interval in box.items() if interval.low is not None
            }
        interval = box.get(open_[0], ANY)
        for value in _candidates(interval):
            if self.left <= 0:
                return None
            fixed = self._narrow({**box, open_[0]: Interval(value, value)})
            if fixed is not None and (point := self._fix(fixed, order)) is not None:
                return point
        return None


def _candidates(interval: Interval) -> tuple[Fraction, ...]:
    """Values to try: both ends; something above the lower end where there is no upper one."""
    low, high = interval.low or Fraction(0), interval.high
    if high is None:
        return (2 * low if low else Fraction(1, 100), low)
    return (high, low)


def _halves(box: Box) -> list[Box]:
    wide = {
        name: interval.high - interval.low
        for name, interval in box.items()
        if interval.low is not None and interval.high is not None and not interval.is_point
    }
    if not wide:
        return []
    name = max(wide, key=lambda each: wide[each] / (box[each].high or 1))
    middle = (box[name].low or 0) + wide[name] / 2
    return [
        {**box, name: Interval(box[name].low, middle)},
        {**box, name: Interval(middle, box[name].high)},
    ]
