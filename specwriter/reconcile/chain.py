"""The steps by which the other members of a clash come to what they leave one of them."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from specwriter.quantity import Interval
from specwriter.reconcile.box import box_of
from specwriter.reconcile.connected import connected
from specwriter.reconcile.implied import with_implied
from specwriter.reconcile.propagate import narrows, propagate
from specwriter.reconcile.relation import ANY, Box, Linear, Relation
from specwriter.reconcile.requirement import Requirement

ROUNDS = 12
End = tuple[str, int]
"""A variable and one end of its range: -1 the lower, 1 the upper."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Step:
    """What the relations leave a variable, with no more ends than the next step needs."""

    variable: str
    to: Interval
    relations: tuple[Relation, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class _Move:
    """One end of a range, moved by a relation from ends of other variables."""

    end: End
    relation: Relation
    sources: frozenset[End]


@dataclass(frozen=True, slots=True, kw_only=True)
class Given:
    """The ranges that some requirements state, as written if they hold together so (``exact``),
    what is ``left`` of them, and the relations with what these imply."""

    box: Box
    left: Box
    relations: tuple[Relation, ...]
    exact: bool


def left_by(
    others: Sequence[Requirement], relations: Sequence[Relation], variable: str
) -> Given | None:
    """What the others state and leave a variable; ``None`` where they do not hold together."""
    used = connected({variable, *(each.variable for each in others)}, relations)
    for exact in (True, False):
        start = box_of(others, exact=exact)
        known, left = with_implied(propagate(start, used), used, variable)
        if start is not None and left is not None:
            return Given(box=start, left=left, relations=known, exact=exact)
    return None


def chain(
    variable: str, others: Sequence[Requirement], relations: Sequence[Relation]
) -> tuple[Step, ...]:
    """The steps from what the others state to what is left for the variable, that one last."""
    found = left_by(others, relations, variable)
    if found is None:
        return ()
    box = dict(found.box)
    moves: list[_Move] = []
    for _ in range(ROUNDS):
        fresh = list(_round(box, found.relations))
        if not fresh:
            break
        moves += fresh
    needed = {(variable, -1), (variable, 1)}
    used: list[_Move] = []
    for move in reversed(moves):
        if move.end in needed:
            used.insert(0, move)
            needed.remove(move.end)
            needed |= move.sources
    return tuple(_merged(used, box))


def _round(box: Box, relations: Sequence[Relation]) -> Iterator[_Move]:
    """Each relation once; the box is narrowed on the way."""
    for relation in relations:
        for name in relation.variables:
            before = box.get(name, ANY)
            found = relation.shape.narrow(box, name)
            after = before.meet(found)
            if not narrows(before, found) or after.is_empty:
                continue
            box[name] = after
            for side, old, new in ((-1, before.low, after.low), (1, before.high, after.high)):
                if old != new:
                    sources = frozenset(_sources(relation, name, side))
                    yield _Move(end=(name, side), relation=relation, sources=sources)


def _sources(relation: Relation, name: str, side: int) -> Iterator[End]:
    """The ends of the other variables on which an end of this one rests."""
    shape = relation.shape
    for other in relation.variables:
        if other == name:
            continue
        if isinstance(shape, Linear):
            same = shape.factors[other] * shape.factors[name] < 0
            yield other, side if same else -side
        else:
            yield from ((other, -1), (other, 1))


def _merged(moves: Sequence[_Move], box: Box) -> Iterator[Step]:
    """One step a variable, where the last of its ends is found."""
    last = {move.end[0]: place for place, move in enumerate(moves)}
    for place, (name, _) in enumerate(move.end for move in moves):
        if last[name] != place:
            continue
        own = [move for move in moves if move.end[0] == name]
        sides = {move.end[1] for move in own}
        low, high = box[name]
        yield Step(
            variable=name,
            to=Interval(low if -1 in sides else None, high if 1 in sides else None),
            relations=tuple(dict.fromkeys(move.relation for move in own)),
        )
