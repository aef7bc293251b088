"""The flush ground surface between the grooves has a pitch of its own."""

from __future__ import annotations

from specwriter.reconcile.relation import Linear, Relation
from specwriter.reconcile.relations.blade import WHY

RELATION = Relation(
    slug="flush-grind",
    title="blades and land of the flush grind disagree",
    statement="core + spacer = cutting segment + land, within the flush grind",
    shape=Linear(
        {
            "flush_grind.core": 1,
            "flush_grind.spacer": 1,
            "flush_grind.segment": -1,
            "flush_grind.land": -1,
        }
    ),
    why=WHY,
    source="geometry of blades and spacers on one arbor",
    validity="next generation concrete surface; its spacer is not the land between the grooves",
)
