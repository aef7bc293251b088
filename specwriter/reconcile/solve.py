"""Deciding a system: a proof that nothing solves it, or one exact solution."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from typing import Literal

from specwriter.quantity import Interval
from specwriter.reconcile.box import box_of, rough, stated_apart, whole_numbers
from specwriter.reconcile.connected import connected
from specwriter.reconcile.propagate import Narrowing, Refutation
from specwriter.reconcile.relation import ANY, Box, Relation
from specwriter.reconcile.requirement import Requirement
from specwriter.reconcile.search import Answer, Search
from specwriter.reconcile.variables import is_whole


class Question:
    """Relations and a box that they have narrowed, of which several things are asked.

    ``about`` are the variables that are stated or are going to be held.
    """

    def __init__(self, box: Box, about: Iterable[str], relations: Sequence[Relation]) -> None:
        self.search = Search(connected(about, relations))
        names = self.search.names.keys() | about
        self.box = {name: interval for name, interval in box.items() if name in names}

    def ask(self, held: Mapping[str, Interval], *, proves: bool = True) -> Answer:
        """Whether some choice obeys everything with some variables ``held`` to a range.

        Without ``proves`` a choice is looked for and no proof that there is none.
        """
        box = dict(self.box)
        for name, to in held.items():
            own = box.get(name, ANY).meet(to)
            box[name] = whole_numbers(own) if is_whole(name) else own
            if box[name].is_empty:
                return Answer(refuted=True)
        return self.search.decide(box, held, proves=proves)


def solve(
    requirements: Sequence[Requirement], relations: Sequence[Relation], *, exact: bool = False
) -> Answer:
    """Whether some choice of values meets all requirements and relations.

    ``exact`` grants no rounding.
    """
    box = box_of(requirements, exact=exact)
    return Answer(refuted=True) if box is None else Search(connected(box, relations)).decide(box)


def seems_solvable(
    requirements: Sequence[Requirement], relations: Sequence[Relation], *, exact: bool
) -> bool:
    """True when floating point finds a choice that meets everything; quick, for the usual case
    in which nothing is wrong. False says nothing."""
    box = box_of(requirements, exact=exact)
    if box is None:
        return False
    narrowing = Narrowing(box, relations)
    return narrowing.ended and Search(relations).finds(narrowing.left)


def is_refuted(requirements: Sequence[Requirement], relations: Sequence[Relation]) -> bool:
    """True when the requirements, with their rounding granted, are proved impossible."""
    return tried(requirements, relations).outcome == "refuted"


@dataclass(frozen=True, slots=True)
class Trial:
    """A choice is found; none is possible; or neither is decided. ``because`` is what a short
    proof rests on."""

    outcome: Literal["met", "refuted", "open"]
    because: Refutation | None = None


def tried(requirements: Sequence[Requirement], relations: Sequence[Relation]) -> Trial:
    """Whether the requirements, with their rounding granted, can be met.

    Where floating point finds a choice that meets them all, no proof is looked for.
    """
    box = box_of(requirements)
    if box is None:
        return Trial("refuted", Refutation(stated_apart(requirements), ()))
    used = connected(box, relations)
    narrowing = Narrowing(box, used)
    if (because := narrowing.because) is not None:
        return Trial("refuted", because)
    search = Search(used)
    if narrowing.ended and search.finds(narrowing.left):
        return Trial("met")
    if (narrowed := narrowing.exact) is None:
        return Trial("refuted")
    left, implied = search.with_implied(narrowed)
    if left is None:
        return Trial("refuted", Narrowing(box, implied).because)
    if not narrowing.ended and search.finds(rough(left)):
        return Trial("met")
    answer = search.halve(left, implied)
    return Trial("refuted" if answer.refuted else "open" if answer.solution is None else "met")
