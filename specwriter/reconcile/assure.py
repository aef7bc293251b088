"""A required result held against everything else that the job states.

*Assured* when the range of the result, narrowed by all the rest, stays inside the limit: a proof.
*Not assured* when one choice obeys all the rest as written and fails the limit: the witness.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from fractions import Fraction

from specwriter.quantity import Interval
from specwriter.reconcile.approach import CLOSE, HAIR, approached
from specwriter.reconcile.box import neat
from specwriter.reconcile.relation import ANY, Box, Relation
from specwriter.reconcile.requirement import Requirement
from specwriter.reconcile.rest import Rest
from specwriter.reconcile.search import Answer, Point
from specwriter.reconcile.verdict import Outcome, ResultCheck


def producer(target: Requirement, relations: Sequence[Relation]) -> Relation | None:
    """The relation through which the rest is expected to assure the result."""
    return next(
        (each for each in relations if each.assures and each.output == target.variable), None
    )


def unknown_inputs(relation: Relation, rest: Rest) -> tuple[str, ...]:
    """Inputs of which nothing is known without the relation itself, besides the optional ones."""
    stated = {each.variable for each in rest.requirements}
    needed = {relation.output, *relation.optional}
    if all(name in stated or name in needed for name in relation.variables):
        return ()
    others = tuple(each for each in rest.relations if each.output != relation.output)
    box = replace(rest, relations=others, wider=None).rough_box
    return tuple(
        name
        for name in relation.variables
        if name != relation.output and name not in relation.optional and not is_known(name, box)
    )


def is_known(name: str, box: Box) -> bool:
    """True when the rest bounds a variable."""
    interval = box.get(name, ANY)
    return interval.high is not None or bool(interval.low)


def check_result(
    target: Requirement, relation: Relation, rest: Rest
) -> tuple[Outcome, ResultCheck]:
    """The outcome for one required result, with the witness where there is one."""
    quick = rest.rough_box
    allowed = quick.get(target.variable, ANY)
    if _is_inside(target.interval, allowed):
        margin = None if relation.nominal else _margin(target.interval, neat(allowed))
        return "not decided" if relation.nominal else "assured", ResultCheck(
            target=target,
            relation=relation,
            allowed=neat(allowed),
            members=members_of(relation, rest),
            margin=margin,
        )
    box = rest.box
    check = ResultCheck(
        target=target,
        relation=relation,
        allowed=box.get(target.variable, ANY),
        members=members_of(relation, rest),
        missing=next((name for name in relation.optional if not is_known(name, box)), ""),
    )
    for side, limit, end in sides(target.interval, check.allowed):
        if end is not None and (end - limit) * side <= 0:
            continue
        found = failing(target.variable, rest, side, limit, end)
        if found.solution is not None:
            worst, bound = _worst(target.variable, rest, side, limit, found.solution, end)
            return "not assured", replace(
                check,
                witness=tuple(sorted(worst.items())),
                allowed=_from(check.allowed, side, bound),
            )
        if not found.refuted:
            return "not decided", check
    if relation.nominal:
        return "not decided", check
    return "assured", replace(check, margin=_margin(target.interval, check.allowed))


def _is_inside(goal: Interval, allowed: Interval) -> bool:
    """True when all that floating point allows lies inside the limits, by more than a hair."""
    return all(
        end is not None and (end - limit) * side <= -abs(limit) * HAIR
        for side, limit, end in sides(goal, allowed)
    )


def sides(goal: Interval, allowed: Interval) -> Iterator[tuple[int, Fraction, Fraction | None]]:
    """Each limit (1 an upper, -1 a lower one) with the end of the allowed range beside it."""
    if goal.low:
        yield -1, goal.low, allowed.low
    if goal.high is not None:
        yield 1, goal.high, allowed.high


def beyond(side: int, limit: Fraction) -> Interval:
    """The values that fail a limit, by more than a hair."""
    hair = abs(limit) * HAIR
    return Interval(None, limit - hair) if side < 0 else Interval(limit + hair, None)


def failing(variable: str, rest: Rest, side: int, limit: Fraction, end: Fraction | None) -> Answer:
    """A choice that fails the limit, the worst one where it is found; or a proof of none."""
    if end is not None:
        found = rest.answer({variable: Interval(end, end)}, proves=False)
        if found.solution is None:
            hair = abs(end) * HAIR or abs(limit) * CLOSE
            near = Interval(end - hair, end) if side > 0 else Interval(end, end + hair)
            found = rest.answer({variable: near})
        if found.solution is not None:
            return found
    return rest.answer({variable: beyond(side, limit)})


def _worst(
    variable: str,
    rest: Rest,
    side: int,
    limit: Fraction,
    found: Point,
    end: Fraction | None,
) -> tuple[Point, Fraction | None]:
    """The worst choice that is found, and what none goes beyond."""
    if end is not None:
        question = rest.question(frozenset({variable}))
        found, end = approached(variable, found, end, question, limit)
    return _cornered(variable, rest, side, found), end


def _cornered(variable: str, rest: Rest, side: int, found: Point) -> Point:
    """The choice with each dimension at the end of its range that it lies beside, if it can be."""
    box = rest.box
    names = {each.variable for each in rest.requirements if each.role == "dimension"} | {*rest.held}
    ends = {name: _end_beside(found[name], box[name]) for name in names & {*found}}
    held = {name: Interval(end, end) for name, end in ends.items() if end is not None}
    reached = found[variable]
    held[variable] = Interval(None, reached) if side < 0 else Interval(reached, None)
    return rest.answer(held, proves=False).solution or found


def _end_beside(value: Fraction, interval: Interval) -> Fraction | None:
    ends = [end for end in interval if end is not None]
    near = min(ends, key=lambda end: abs(end - value), default=None)
    return near if near is not None and abs(near - value) <= abs(value) / 50 else None


def _from(allowed: Interval, side: int, bound: Fraction | None) -> Interval:
    """The range with the end on one side moved inwards to what is proved."""
    return Interval(bound, allowed.high) if side < 0 else Interval(allowed.low, bound)


def _margin(goal: Interval, allowed: Interval) -> Fraction | None:
    """How far the worst allowed value stays inside the nearest limit."""
    room = [(limit - end) * side for side, limit, end in sides(goal, allowed) if end is not None]
    return min(room, default=None)


def members_of(relation: Relation, rest: Rest) -> tuple[Requirement, ...]:
    """The requirements that bear on the result through the relations that lead to it."""
    names = set(relation.variables)
    for each in rest.relations:
        if each.output in names and each is not relation:
            names.update(each.variables)
    return tuple(each for each in rest.requirements if each.variable in names)
