"""The passes must reach from edge to edge of what is to be textured."""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction

from specwriter.model import Area, Job
from specwriter.quantity import Interval
from specwriter.reconcile.relation import Linear, Relation
from specwriter.reconcile.relations.coverage import WHY
from specwriter.reconcile.requirement import sources

_NOT_TO_THE_EDGES = ("centred_in_lane", "part_of_lane")


def _applies(offset: bool, shared: bool) -> Callable[[Job, Area], bool]:
    def applies(job: Job, area: Area) -> bool:
        stated = [each.coverage for each in sources(area) if each.coverage is not None]
        if any(each.pattern in _NOT_TO_THE_EDGES for each in stated):
            return False
        shares = [each.share.interval.low for each in stated if each.share is not None]
        is_share = any(low is not None and low < 1 for low in shares)
        is_offset = any(each.edge_offset is not None for each in stated)
        return (is_offset, is_share and not is_offset) == (offset, shared)

    return applies


def _relation(offset: bool, shared: bool) -> Relation:
    """Where a share is asked for and no edge is spoken of, a bare edge may lie within the share."""
    edges = {"coverage.edge_offset": 2} if offset else {}
    return Relation(
        slug="passes-reach-the-edges",
        title="the passes do not cover the lane",
        statement=(
            "width covered is at least the lane width"
            + (" - 2 x distance left at the edge" if offset else "")
        ),
        shape=Linear(
            {"coverage.reach": 1, "conditions.lane_width": -1} | edges,
            Interval(Fraction(0), None),
        ),
        why=WHY,
        source="geometry of strips side by side"
        + ("; California DOT Standard Specifications 42-2, 2015: a share of a window" * shared),
        validity="lanes that are textured over their full width"
        + (", unless the share that may stay bare is left along the edges" * shared),
        kind="model" if shared else "exact",
        applies=_applies(offset, shared),
    )


RELATIONS = [_relation(False, False), _relation(False, True), _relation(True, False)]
