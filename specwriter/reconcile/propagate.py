"""Narrowing of all intervals, relation by relation, until nothing moves."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from specwriter.reconcile.relation import ANY, Box, Relation
from specwriter.reconcile.requirement import Requirement

ROUNDS = 40
"""Enough for every chain of the relations here; stopping early is sound, only less sharp."""


def box_of(requirements: Iterable[Requirement], *, exact: bool = False) -> Box | None:
    """The intervals that the requirements state; ``None`` when two on one variable clash."""
    box: Box = {}
    for each in requirements:
        own = each.interval if exact else each.reading
        box[each.variable] = box.get(each.variable, ANY).meet(own)
    return None if any(interval.is_empty for interval in box.values()) else box


def propagate(box: Box | None, relations: Sequence[Relation]) -> Box | None:
    """The narrowed box, or ``None`` when some variable is left without a value: a proof."""
    if box is None:
        return None
    now = dict(box)
    for _ in range(ROUNDS):
        moved = False
        for relation in relations:
            for variable in relation.variables:
                found = relation.shape.narrow(now, variable)
                before = now.get(variable, ANY)
                if before.within(found):
                    continue
                after = before.meet(found)
                now[variable] = after
                moved = True
                if after.is_empty:
                    return None
        if not moved:
            break
    return now
