"""Bounded searches: fixing one variable after another at an end of its interval finds a choice.

Where that finds none, the widest interval is halved and both halves are tried, up to a bound.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction
from math import floor

from specwriter.quantity import Interval
from specwriter.reconcile.implied import clashing_sum, with_implied
from specwriter.reconcile.propagate import FAR, bounded, propagate
from specwriter.reconcile.relation import ANY, Box, Linear, Relation
from specwriter.reconcile.shape import is_settled
from specwriter.reconcile.variables import is_outcome, is_whole

BUDGET = 150
"""Propagations spent on one question before it is left undecided."""
FIXES = 60
"""Of these, the ones spent on looking for a solution in one box."""

Point = Mapping[str, Fraction]


@dataclass(frozen=True, slots=True)
class Answer:
    """``solution`` when there is one; ``refuted`` when there is none; neither: not decided."""

    solution: Point | None = None
    refuted: bool = False


class Search:
    """Bounded searches for a choice that obeys some relations."""

    def __init__(self, relations: Sequence[Relation]) -> None:
        self.relations = tuple(relations)
        self.names = dict.fromkeys(name for each in relations for name in each.variables)
        computed = {name for each in relations for name in each.shape.only_computed}
        computed |= {name for name in self.names if is_outcome(name)}
        free = sorted((name for name in self.names if name not in computed), key=_whole_first)
        self.orders = ([*free, *computed], [*free[::-1], *computed])
        self.left = BUDGET
        self.implied: tuple[Relation, ...] | None = None

    def finds(self, box: Box | None) -> bool:
        """True when a choice is found in a box in floating point that is narrowed already."""
        self.left = BUDGET
        return box is not None and self._found_near(box) is not None

    def decide(
        self, start: Box, changed: Iterable[str] | None = None, *, proves: bool = True
    ) -> Answer:
        """A choice in the whole box, or in one of its halves, or a proof that there is none.

        Only ``changed`` variables are to be looked at first, where given. Without ``proves`` only
        the whole box is looked at.
        """
        self.left = BUDGET
        box = self._narrow(start, changed)
        if box is None:
            return Answer(refuted=True)
        point = self._found_near(box)
        if point is not None or not proves:
            return Answer(solution=point)
        return self.halve(*self.with_implied(box))

    def with_implied(self, box: Box) -> tuple[Box | None, Sequence[Relation]]:
        """A narrowed box with what the relations imply, and these. What is implied in one box is
        in another; it is looked for only in the first."""
        if self.implied is None:
            self.implied, left = with_implied(box, self.relations)
            return left, self.implied
        return propagate(box, self.implied), self.implied

    def halve(self, box: Box | None, implied: Sequence[Relation]) -> Answer:
        """One half after the other of a narrowed box, with what its relations imply."""
        whole = bounded(box, implied)
        if whole is None:
            return Answer(refuted=True)
        curved = [each for each in self.relations if not isinstance(each.shape, Linear)]
        bent = dict.fromkeys(name for each in curved for name in each.variables)
        boxes = [whole]
        while boxes and self.left > 0:
            self.left -= 1
            part = propagate(boxes.pop(0), implied)
            if part is None or clashing_sum(part, implied) is not None:
                continue
            if (point := self._point_of(part, len(self.names))) is not None:
                return Answer(solution=point)
            halves = _halves(part, whole, bent)
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
        return self._narrow({**box, **ends}, open_) if open_ else None

    def _point_of(self, box: Box | None, fixes: int) -> Point | None:
        """A solution in the box, if so many fixes find one."""
        if box is None:
            return None
        for order in self.orders:
            self.fixes = fixes
            if (point := self._fix(box, order)) is not None:
                return point
        return None

    def _narrow(self, box: Box | None, changed: Iterable[str] | None = None) -> Box | None:
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
            fixed = self._narrow({**box, name: Interval(value, value)}, (name,))
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
