"""Everything that is stated beside a required result."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, replace
from functools import cached_property

from specwriter.quantity import Interval
from specwriter.reconcile.box import box_of
from specwriter.reconcile.propagate import Narrowing
from specwriter.reconcile.relation import ANY, Box, Relation, as_judged
from specwriter.reconcile.requirement import Requirement
from specwriter.reconcile.search import Answer
from specwriter.reconcile.solve import Question, solve


@dataclass(frozen=True, kw_only=True)
class Rest:
    """What is stated beside the result, and the relations that tie it together.

    ``exact`` is false where the values hold together only with their rounding granted; ``held``
    are variables that nothing states and that are held to a range to see what follows. ``wider``
    is a rest that this one narrows: what follows from it is not worked out again.
    """

    requirements: tuple[Requirement, ...]
    relations: tuple[Relation, ...]
    exact: bool
    held: Mapping[str, Interval] = field(default_factory=dict)
    wider: Rest | None = None

    @property
    def box(self) -> Box:
        """The intervals that are left; none where the rest itself is contradictory."""
        return (self._narrowing and self._narrowing.exact) or {}

    @property
    def rough_box(self) -> Box:
        """The same in floating point, widened by its rounding."""
        return (self._narrowing and self._narrowing.left) or {}

    @cached_property
    def _narrowing(self) -> Narrowing | None:
        start = box_of(self.requirements, exact=self.exact)
        if start is None:
            return None
        start |= self.held
        if self.wider is None or not self.wider.box:
            return Narrowing(start, self.relations)
        before = self.wider.box
        box = before | {name: before.get(name, ANY).meet(own) for name, own in start.items()}
        changed = [name for name, own in box.items() if own != before.get(name)]
        return Narrowing(box, self.relations, changed)

    def answer(self, held: Mapping[str, Interval], *, proves: bool = True) -> Answer:
        """Whether a choice obeys the rest with some variables held."""
        if not self.box:
            return Answer(refuted=True)
        return self.question(frozenset(held)).ask(held, proves=proves)

    def question(self, held: frozenset[str]) -> Question:
        """What is to be asked with some variables held."""
        if held not in self._questions:
            stated = {each.variable for each in self.requirements}
            about = stated | held | self.held.keys()
            self._questions[held] = Question(self.box, about, self.relations)
        return self._questions[held]

    @cached_property
    def _questions(self) -> dict[frozenset[str], Question]:
        return {}

    def with_one(self, old: Requirement, new: Requirement) -> Rest:
        """The same with one requirement in another's place."""
        changed = tuple(new if each is old else each for each in self.requirements)
        narrows = new.interval.within(old.interval)
        return replace(self, requirements=changed, wider=self if narrows else None)

    def holding(self, held: Mapping[str, Interval]) -> Rest:
        """The same with variables held that nothing states."""
        return replace(self, held=held, wider=self)


def rest_of(
    target: Requirement,
    requirements: Sequence[Requirement],
    relations: Sequence[Relation],
    *,
    exact: bool | None = None,
) -> Rest:
    """Everything but what is asked of the target's own variable.

    ``exact`` says whether it holds together as written, where that is known.
    """
    others = tuple(each for each in requirements if each.variable != target.variable)
    used = tuple(as_judged(each) for each in relations if each.kind != "experience")
    if exact is None:
        exact = solve(others, used, exact=True).solution is not None
    return Rest(requirements=others, relations=used, exact=exact)
