"""The least change of one dimension that would assure a result."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from fractions import Fraction
from math import ceil

from specwriter.quantity import UNITS, Interval, Unit
from specwriter.reconcile.assure import failing, sides
from specwriter.reconcile.connected import connected
from specwriter.reconcile.propagate import Narrowing
from specwriter.reconcile.relation import ANY
from specwriter.reconcile.requirement import Requirement
from specwriter.reconcile.rest import Rest
from specwriter.reconcile.search import Answer, Point
from specwriter.reconcile.variables import VARIABLES
from specwriter.reconcile.verdict import ResultCheck, Tightening

_TRIES, _ROUNDS = 8, 2
"""Worst choices looked at in turn: with another input, another choice may be the worst."""


def tightenings(check: ResultCheck, rest: Rest) -> tuple[Tightening, ...]:
    """For each dimension, and each result that the relation itself takes in: the end to which it
    alone would have to be moved, where that helps."""
    return tuple(_tightenings(check, rest))


def _tightenings(check: ResultCheck, rest: Rest) -> Iterator[Tightening]:
    for each in check.members:
        if each.role == "result" and each.variable not in check.relation.variables:
            continue
        if (to := _tightened(each, check, rest)) is not None:
            yield Tightening(member=each, to=to)


def _tightened(each: Requirement, check: ResultCheck, rest: Rest) -> Interval | None:
    """Where one requirement alone would have to be. Where that is not enough, because the witness
    is not the worst choice, it is worked out again from the worst that is left."""
    witness: Point = dict(check.witness)
    for _ in range(_ROUNDS):
        still = None
        for to in _candidates(each, witness, check, rest):
            moved = rest.with_one(each, each.narrowed(to))
            found = _failing(check, moved)
            if found.refuted:
                return to
            still = still or (found.solution and (_worst(check, moved) or found.solution))
        if still is None:
            return None
        witness = still
    return None


def _worst(check: ResultCheck, rest: Rest) -> Point | None:
    """The choice at the end of what is left of the result on the side that fails, if it is one."""
    variable = check.target.variable
    for side, limit, end in sides(check.target.interval, rest.box.get(variable, ANY)):
        if end is not None and (end - limit) * side > 0:
            return rest.answer({variable: Interval(end, end)}, proves=False).solution
    return None


def _candidates(
    each: Requirement, witness: Point, check: ResultCheck, rest: Rest
) -> Iterator[Interval]:
    """The parts of what is stated, or else the ranges beside it, in which the witness passes."""
    before = None
    for needed in needed_of(each.variable, witness, check, rest):
        if needed == before or each.interval.within(needed):
            continue
        held, before = each.interval.meet(needed), needed
        to = _stated_elsewhere(each, rest).meet(needed if held.is_empty else held)
        if not to.is_empty:
            yield to


def _stated_elsewhere(requirement: Requirement, rest: Rest) -> Interval:
    """What other places ask of the same variable."""
    found = Interval()
    for each in rest.requirements:
        if each is not requirement and each.variable == requirement.variable:
            found = found.meet(each.interval)
    return found


def missing_needed(check: ResultCheck, rest: Rest) -> Fraction | None:
    """The least value of the input that the job does not state which assures the result."""
    witness: Point = dict(check.witness)
    for _ in range(_TRIES):
        needed = next(needed_of(check.missing, witness, check, rest), None)
        if needed is None or needed.low is None:
            return None
        least = _hundredth_above(needed.low, UNITS[VARIABLES[check.missing].unit])
        found = _failing(check, rest.holding({check.missing: Interval(least, None)}), worst=True)
        if found.refuted:
            return least
        if found.solution is None:
            return None
        witness = found.solution
    return None


def _hundredth_above(value: Fraction, unit: Unit) -> Fraction:
    """The next hundredth of the unit, as which the value is shown."""
    return unit.to_base(Fraction(ceil(unit.from_base(value) * 100), 100))


def needed_of(
    variable: str, witness: Mapping[str, Fraction], check: ResultCheck, rest: Rest
) -> Iterator[Interval]:
    """What one variable must be so that the witness, else unchanged, passes.

    First the results that the relation does not take in are let follow from it; then they are held
    too, because they may fix what nothing states.
    """
    stated = frozenset(each.variable for each in rest.requirements) | {check.missing}
    results = {each.variable for each in rest.requirements if each.role == "result"}
    for held in dict.fromkeys((stated - (results - {*check.relation.variables}), stated)):
        box = {
            name: Interval(witness[name], witness[name])
            for name in held - {variable}
            if name in witness
        }
        box[check.target.variable] = check.target.interval
        narrowing = Narrowing(box, connected({variable, *box}, rest.relations))
        if narrowing.ended and narrowing.exact is not None:
            found = narrowing.exact.get(variable, ANY)
            if found.low or found.high is not None:
                yield found


def _failing(check: ResultCheck, rest: Rest, *, worst: bool = False) -> Answer:
    """A choice that obeys the rest and fails the limit (the ``worst``, where that is found), or
    the proof that there is none."""
    variable = check.target.variable
    refuted = bool(rest.box)
    for side, limit, end in sides(check.target.interval, rest.box.get(variable, ANY)):
        if end is None or (end - limit) * side > 0:
            answer = failing(variable, rest, side, limit, end if worst else None)
            if answer.solution is not None:
                return answer
            refuted &= answer.refuted
    return Answer(refuted=refuted)
