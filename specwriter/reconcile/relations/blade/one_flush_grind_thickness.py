"""One thickness given beside a spacer stands for core and cutting segment."""

from __future__ import annotations

from specwriter.model import Area
from specwriter.reconcile.relation import Linear, Relation


def _one_thickness(area: Area) -> bool:
    blade = area.flush_grind
    return (
        blade is not None
        and blade.spacer is not None
        and (blade.core is None) != (blade.segment is None)
    )


RELATION = Relation(
    slug="one-flush-grind-thickness",
    title="blade thickness and pattern disagree",
    statement=(
        "one blade thickness given alone beside a spacer is read as both the core and "
        "the cutting segment"
    ),
    shape=Linear({"flush_grind.core": 1, "flush_grind.segment": -1}),
    source="common practice, no source",
    validity="a job that gives the core or the cutting segment of the flush grind, not both",
    applies=_one_thickness,
)
