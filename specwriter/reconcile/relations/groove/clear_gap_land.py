"""The clear gap between two grooves is the land."""

from __future__ import annotations

from specwriter.reconcile.relation import Linear, Relation
from specwriter.reconcile.relations.groove import WHY

RELATION = Relation(
    slug="clear-gap-land",
    title="clear gap and land disagree",
    statement="clear gap = land width",
    shape=Linear({"groove.clear_gap": 1, "land.width": -1}),
    why=WHY,
    source="geometry: both names mean the uncut strip between two grooves",
    validity="any uniform pattern of parallel grooves",
    sentence=(
        "The clear gap is the land itself: {groove_clear_gap} and {land_width} cannot "
        "both be right."
    ),
    about=("groove.clear_gap",),
)
