"""The choice nearest to an end of a range, by halving."""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction

from specwriter.quantity import Interval
from specwriter.reconcile.solve import Answer, Point

HAIR = Fraction(1, 10**9)
"""Share by which an end may be missed: what is computed in floating point is that exact."""

_CLOSE, _STEPS = Fraction(1, 2000), 20
"""How near an end is looked for, and in how many halvings at the most."""

Ask = Callable[[Interval], Answer]
"""Whether a choice has the variable in an interval."""


def approached(name: str, found: Point, end: Fraction, ask: Ask) -> tuple[Point, Fraction]:
    """A choice nearer to an end that was not found to be one, and what none goes beyond."""
    for _ in range(_STEPS):
        reached = found[name]
        if abs(end - reached) <= abs(reached) * _CLOSE:
            break
        middle = (end + reached) / 2
        answer = ask(Interval(*sorted((end, middle))))
        if answer.solution is not None:
            found = answer.solution
        elif answer.refuted:
            end = middle
        else:
            break
    return found, end
