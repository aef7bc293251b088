"""The land is the spacer less what the rims overhang their cores."""

from __future__ import annotations

from specwriter.reconcile.relation import Linear, Relation

RELATION = Relation(
    slug="land-of-the-blades",
    title="land and blade set disagree",
    statement="land width = spacer - (cutting segment - core)",
    shape=Linear({"land.width": 1, "blade.spacer": -1, "blade.segment": 1, "blade.core": -1}),
    source="geometry: the rim overhangs the core on both sides",
    validity="a head with one kind of blade and one kind of spacer",
    sentence=(
        "A spacer of {blade_spacer} between cores of {blade_core} with segments of "
        "{blade_segment} leaves a land of {found}, not {land_width}."
    ),
    about=("blade.segment", "blade.core", "blade.spacer"),
)
