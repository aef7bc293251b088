"""The spacing is one groove and one land."""

from __future__ import annotations

from specwriter.reconcile.relation import Linear, Relation
from specwriter.reconcile.relations.groove import WHY

RELATION = Relation(
    slug="groove-land-spacing",
    title="groove, land and spacing disagree",
    statement="spacing, centre to centre = groove width + land width",
    shape=Linear({"groove.spacing": 1, "groove.width": -1, "land.width": -1}),
    why=WHY,
    source="geometry: the definition of the spacing, centre to centre",
    validity="any uniform pattern of parallel grooves",
    sentence=(
        "A {groove_width} groove and a {land_width} land repeat every {found}, not every "
        "{groove_spacing}."
    ),
)
