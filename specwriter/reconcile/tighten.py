"""The least change of one dimension that would assure a result."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from fractions import Fraction

from specwriter.quantity import Interval
from specwriter.reconcile.assure import Rest, beyond, sides
from specwriter.reconcile.propagate import box_of, propagate
from specwriter.reconcile.relation import ANY
from specwriter.reconcile.verdict import ResultCheck, Tightening


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
    start = box_of(rest.requirements, exact=rest.exact)
    left = propagate(start, rest.relations)
    if left is None:
        return False
    allowed = left.get(check.target.variable, ANY)
    return all(
        (end is not None and (end - limit) * side <= 0)
        or rest.answer({check.target.variable: beyond(side, limit)}).refuted
        for side, limit, end in sides(check.target.interval, allowed)
    )
