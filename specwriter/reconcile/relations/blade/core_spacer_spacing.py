"""Two neighbouring blades stand one core and one spacer apart."""

from __future__ import annotations

from specwriter.reconcile.relation import Linear, Relation
from specwriter.reconcile.relations.blade import WHY

RELATION = Relation(
    slug="core-spacer-spacing",
    title="blade core, spacer and spacing disagree",
    statement="spacing = blade core + spacer",
    shape=Linear({"groove.spacing": 1, "blade.core": -1, "blade.spacer": -1}),
    why=WHY,
    source="geometry of blades and spacers on one arbor",
    validity="a head with one kind of blade and one kind of spacer",
    sentence=(
        "A core of {blade_core} and a spacer of {blade_spacer} set the blades {found} "
        "apart, not {groove_spacing}."
    ),
    about=("blade.segment", "blade.core", "blade.spacer"),
)
