"""Where one member of a clash would have to move: the values that the others leave it."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction

from specwriter.quantity import Interval
from specwriter.reconcile.approach import HAIR, approached
from specwriter.reconcile.chain import left_by
from specwriter.reconcile.relation import ANY, Relation
from specwriter.reconcile.requirement import Requirement
from specwriter.reconcile.solve import Question


@dataclass(frozen=True, slots=True)
class Room:
    """The range that others leave a variable, as written where ``exact``, else only with the
    rounding of their values granted."""

    to: Interval
    exact: bool


def room(
    member: Requirement, others: Sequence[Requirement], relations: Sequence[Relation]
) -> Room | None:
    """The range that the others leave the member's variable; ``None`` if nothing.

    Each end of it can be built. It lies to the nearer side of what the member itself asks.
    """
    found = left_by(others, relations, member.variable)
    if found is None:
        return None
    name = member.variable
    about = {name, *(each.variable for each in others)}
    question = Question(found.left, about, found.relations)
    sides = _beside(found.left.get(name, ANY), member.reading)
    open_ = [to for side in sides if (to := _built(name, side, question)) is not None]
    if not open_:
        return None
    return Room(min(open_, key=lambda each: _apart(each, member.reading)), found.exact)


def _beside(left: Interval, refuted: Interval) -> Iterator[Interval]:
    """What is left below and above the refuted part."""
    if refuted.low is not None and (left.low is None or left.low < refuted.low):
        yield left.meet(Interval(None, refuted.low))
    if refuted.high is not None and (left.high is None or left.high > refuted.high):
        yield left.meet(Interval(refuted.high, None))


def _apart(one: Interval, other: Interval) -> Fraction:
    """How far apart two ranges lie."""
    gaps = [
        low - high
        for low, high in ((one.low, other.high), (other.low, one.high))
        if low is not None and high is not None
    ]
    return max(gaps, default=Fraction(0))


def _built(name: str, side: Interval, question: Question) -> Interval | None:
    """The part of a range whose ends can be built; ``None`` where nothing in it can be."""
    ends = [_reached(name, side, end, question) for end in side]
    to = Interval(*(end for end, _ in ends))
    if any(built for _, built in ends) or question.ask({name: to}).solution is not None:
        return to
    return None


def _reached(
    name: str, to: Interval, end: Fraction | None, question: Question
) -> tuple[Fraction | None, bool]:
    """The value nearest to an end of the range that can be built, and whether one was found; the
    end, if none is."""
    if not end:
        return end, False
    near = Interval(end - abs(end) * HAIR, end + abs(end) * HAIR)
    if question.ask({name: near.meet(to)}).solution is not None:
        return end, True
    point = question.ask({name: to}).solution
    if point is None:
        return end, False
    return approached(name, point, end, question)[0][name], True
