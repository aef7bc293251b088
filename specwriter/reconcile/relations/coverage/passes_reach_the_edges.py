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


def _applies(offset: bool) -> Callable[[Job, Area], bool]:
    def applies(job: Job, area: Area) -> bool:
        stated = [each.coverage for each in sources(area) if each.coverage is not None]
        if any(each.pattern in _NOT_TO_THE_EDGES for each in stated):
            return False
        return any(each.edge_offset is not None for each in stated) is offset

    return applies


def _relation(offset: bool) -> Relation:
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
        source="geometry of strips side by side",
        validity="lanes that are textured over their full width",
        applies=_applies(offset),
    )


RELATIONS = [_relation(False), _relation(True)]
