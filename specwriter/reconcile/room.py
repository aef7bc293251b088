"""Where one member of a clash would have to move: the values that the others leave it."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction

from specwriter.quantity import Interval
from specwriter.reconcile.approach import HAIR, Ask, approached
from specwriter.reconcile.chain import left_by
from specwriter.reconcile.relation import ANY, Relation
from specwriter.reconcile.requirement import Requirement
from specwriter.reconcile.solve import Answer, solve


def room(
    member: Requirement, others: Sequence[Requirement], relations: Sequence[Relation]
) -> Interval | None:
    """The range that the others, as written, leave the member's variable; ``None`` if nothing.

    Each end of it can be built. It lies to the nearer side of what the member itself asks.
    """
    found = left_by(others, relations)
    if found is None:
        return None
    name, exact, known = member.variable, found.exact, found.relations

    def ask(held: Interval) -> Answer:
        return solve(others, known, exact=exact, held={name: held})

    sides = _beside(found.left.get(name, ANY), member.reading)
    open_ = [to for side in sides if (to := _built(name, side, ask)) is not None]
    return min(open_, key=lambda each: _apart(each, member.reading), default=None)


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


def _built(name: str, side: Interval, ask: Ask) -> Interval | None:
    """The part of a range whose ends can be built; ``None`` where nothing in it can be."""
    ends = [_reached(name, side, end, ask) for end in side]
    to = Interval(*(end for end, _ in ends))
    return to if any(built for _, built in ends) or not ask(to).refuted else None


def _reached(
    name: str, to: Interval, end: Fraction | None, ask: Ask
) -> tuple[Fraction | None, bool]:
    """The value nearest to an end of the range that can be built, and whether one was found; the
    end, if none is."""
    if not end:
        return end, False
    near = Interval(end - abs(end) * HAIR, end + abs(end) * HAIR)
    if ask(near.meet(to)).solution is not None:
        return end, True
    point = ask(to).solution
    return (end, False) if point is None else (approached(name, point, end, ask)[0][name], True)
