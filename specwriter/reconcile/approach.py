"""The choice nearest to an end of a range, by halving."""

from __future__ import annotations

from fractions import Fraction

from specwriter.quantity import Interval
from specwriter.reconcile.search import Point
from specwriter.reconcile.solve import Question

HAIR = Fraction(1, 10**9)
"""Share by which an end may be missed: what is computed in floating point is that exact."""

CLOSE, _STEPS = Fraction(1, 2000), 20
"""How near an end is looked for, and in how many halvings at the most."""


def approached(
    name: str, found: Point, end: Fraction, question: Question, limit: Fraction = Fraction(0)
) -> tuple[Point, Fraction]:
    """A choice nearer to an end that was not found to be one, and what none goes beyond.

    It is near when it is close to the end as a share of itself, or of the ``limit`` it fails.
    What is close to the end is asked first: most ends are nearly right.
    """
    for step in range(_STEPS):
        reached = found[name]
        close = max(abs(end), abs(reached), abs(limit)) * CLOSE
        if abs(end - reached) <= close:
            break
        middle = (end + reached) / 2 if step else end + (close if reached > end else -close)
        answer = question.ask({name: Interval(*sorted((end, middle)))})
        if answer.solution is not None:
            found = answer.solution
        elif answer.refuted:
            end = middle
        else:
            break
    return found, end
