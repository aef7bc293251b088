"""An independent judge of systems: an SMT solver, exact over the reals.

Outside check: z3 decides polynomial constraints over real numbers by its own method; it shares
nothing with the interval engine but the statement of the relations.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from fractions import Fraction
from typing import Any

import z3

from specwriter.quantity import Interval
from specwriter.reconcile.relation import Function, Linear, Reciprocal, Relation
from specwriter.reconcile.requirement import Requirement
from specwriter.reconcile.variables import is_whole

PATIENCE = 1000
"""Milliseconds after which the judge may say that it does not know."""


class Judge:
    """Requirements and relations as constraints over reals."""

    def __init__(self, requirements: Sequence[Requirement], relations: Sequence[Relation]) -> None:
        names = dict.fromkeys(
            [each.variable for each in requirements]
            + [name for each in relations for name in each.variables]
        )
        self.terms = {name: z3.Int(name) if is_whole(name) else z3.Real(name) for name in names}
        self.solver = z3.Solver()
        self.solver.set("timeout", PATIENCE)
        self.solver.add(*(term >= 0 for term in self.terms.values()))
        for relation in relations:
            self.solver.add(*constraints(relation, self.terms))

    def verdict(self, stated: Iterable[tuple[str, Interval]]) -> str:
        """``sat``, ``unsat`` or ``unknown`` with these variables held to intervals."""
        self.solver.push()
        try:
            for name, interval in stated:
                self.solver.add(*bounds(self.terms[name], interval))
            return str(self.solver.check())
        finally:
            self.solver.pop()


def constraints(relation: Relation, terms: dict[str, Any]) -> Iterator[Any]:
    """A relation in the words of the judge."""
    shape = relation.shape
    if isinstance(shape, Linear):
        total = sum(exact(factor) * terms[name] for name, factor in shape.factors.items())
        yield from bounds(total, shape.span)
    elif isinstance(shape, Reciprocal):
        yield terms[shape.count] * terms[shape.length] == 1
    elif isinstance(shape, Function):
        given = {name: terms[name] for name in shape.inputs}
        yield from (given[name] > 0 for name in shape.inputs if divides(name))
        value, output = shape.value(given), terms[shape.output]
        if shape.bound == "equal":
            yield output == value
        else:
            yield output <= value if shape.bound == "at_most" else output >= value


def divides(name: str) -> bool:
    """True for the variables that stand under a fraction bar."""
    return name in ("groove.spacing", "coverage.window_width", "conditions.slab_thickness")


def bounds(term: Any, interval: Interval) -> Iterator[Any]:
    """``term`` lies in the interval."""
    if interval.low is not None:
        yield term >= exact(interval.low)
    if interval.high is not None:
        yield term <= exact(interval.high)


def exact(number: Fraction | int) -> Any:
    """A rational number, not a rounded one."""
    number = Fraction(number)
    return z3.Q(number.numerator, number.denominator)
