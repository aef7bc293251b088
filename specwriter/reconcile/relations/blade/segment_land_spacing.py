"""Each blade leaves one cut as wide as its segment, and one land."""

from __future__ import annotations

from specwriter.reconcile.relation import Linear, Relation

RELATION = Relation(
    slug="segment-land-spacing",
    title="cutting segment, land and spacing disagree",
    statement="spacing = cutting segment + land width",
    shape=Linear({"groove.spacing": 1, "blade.segment": -1, "land.width": -1}),
    source="geometry: the cutting segment, not the core, cuts the groove",
    validity="a head with one kind of blade and one kind of spacer",
    sentence=(
        "A segment of {blade_segment} and a land of {land_width} repeat every {found}, "
        "not every {groove_spacing}."
    ),
    about=("blade.segment", "blade.core", "blade.spacer"),
)
