"""The least change of one dimension that would assure a result."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import replace
from fractions import Fraction
from math import ceil

from specwriter.quantity import UNITS, Interval, Unit
from specwriter.reconcile.assure import Rest, beyond, check_result, sides
from specwriter.reconcile.propagate import propagate
from specwriter.reconcile.relation import ANY
from specwriter.reconcile.variables import VARIABLES
from specwriter.reconcile.verdict import ResultCheck, Tightening

_TRIES = 8
"""Worst choices looked at in turn: with another input, another choice may be the worst."""


def tightenings(check: ResultCheck, rest: Rest) -> tuple[Tightening, ...]:
    """For each dimension, and each result that the relation itself takes in: the end to which it
    alone would have to be moved, where that helps."""
    return tuple(_tightenings(check, rest))


def _tightenings(check: ResultCheck, rest: Rest) -> Iterator[Tightening]:
    witness = dict(check.witness)
    for each in check.members:
        if each.role == "result" and each.variable not in check.relation.variables:
            continue
        needed = needed_of(each.variable, witness, check, rest)
        if needed is None or each.interval.within(needed):
            continue
        held = each.interval.meet(needed)
        to = needed if held.is_empty else held
        if _assures(check, rest.with_one(each, each.narrowed(to))):
            yield Tightening(member=each, to=to)


def missing_needed(check: ResultCheck, rest: Rest) -> Fraction | None:
    """The least value of the input that the job does not state which assures the result."""
    for _ in range(_TRIES):
        needed = needed_of(check.missing, dict(check.witness), check, rest)
        if needed is None or needed.low is None:
            return None
        least = _hundredth_above(needed.low, UNITS[VARIABLES[check.missing].unit])
        held = replace(rest, held={check.missing: Interval(least, None)})
        if _assures(check, held):
            return least
        outcome, again = check_result(check.target, check.relation, held)
        if outcome != "not assured":
            return None
        check = replace(check, witness=again.witness)
    return None


def _hundredth_above(value: Fraction, unit: Unit) -> Fraction:
    """The next hundredth of the unit, as which the value is shown."""
    return unit.to_base(Fraction(ceil(unit.from_base(value) * 100), 100))


def needed_of(
    variable: str, witness: Mapping[str, Fraction], check: ResultCheck, rest: Rest
) -> Interval | None:
    """What one variable must be so that the witness, else unchanged, passes."""
    box = {
        each.variable: Interval(witness[each.variable], witness[each.variable])
        for each in rest.requirements
        if each.variable != variable and each.variable in witness
    }
    box[check.target.variable] = check.target.interval
    left = propagate(box, rest.relations)
    found = None if left is None else left.get(variable, ANY)
    return found if found and (found.low or found.high is not None) else None


def _assures(check: ResultCheck, rest: Rest) -> bool:
    """True when it is proved that no choice fails the limit any more."""
    left = rest.box()
    if not left:
        return False
    allowed = left.get(check.target.variable, ANY)
    return all(
        (end is not None and (end - limit) * side <= 0)
        or rest.answer({check.target.variable: beyond(side, limit)}).refuted
        for side, limit, end in sides(check.target.interval, allowed)
    )
