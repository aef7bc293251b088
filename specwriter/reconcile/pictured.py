"""A witness that a person can picture, where the worst one lies out of all proportion."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from specwriter.quantity import Interval
from specwriter.reconcile.assure import sides
from specwriter.reconcile.relation import ANY
from specwriter.reconcile.rest import Rest
from specwriter.reconcile.variables import VARIABLES
from specwriter.reconcile.verdict import ResultCheck

_LARGE = Fraction(10)
"""Metres; nothing that is measured in millimetres is so large: common practice, no source."""
_PART, _HAIR = Fraction(1, 2), Fraction(1, 100)


def pictured(check: ResultCheck, rest: Rest) -> ResultCheck:
    """The check with a choice that fails the limit by half of it at the most, where the worst
    choice has a spacing of a mile because nothing in the job ends it."""
    if not any(value > _LARGE and VARIABLES[name].unit == "mm" for name, value in check.witness):
        return check
    variable = check.target.variable
    for side, limit, _ in sides(check.target.interval, ANY):
        near = Interval(*sorted((limit * (1 + side * _PART), limit * (1 + side * _HAIR))))
        found = rest.answer({variable: near}, proves=False).solution
        if found is not None:
            return replace(check, witness=tuple(sorted(found.items())))
    return check
