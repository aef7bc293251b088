"""The spacing is one groove and one clear gap."""

from __future__ import annotations

from specwriter.reconcile.relation import Linear, Relation

RELATION = Relation(
    slug="clear-gap-spacing",
    title="clear gap and spacing disagree",
    statement="spacing, centre to centre = groove width + clear gap",
    shape=Linear({"groove.spacing": 1, "groove.width": -1, "groove.clear_gap": -1}),
    why=(
        "Spacing runs from centre to centre, the clear gap from edge to edge. Mixed "
        "up, the grooves come closer or farther apart by a whole groove width, over "
        "the whole job."
    ),
    source=(
        "geometry: the clear gap is measured from edge to edge, the spacing from centre to centre"
    ),
    validity="any uniform pattern of parallel grooves",
    sentence=(
        "A {groove_width} groove and a clear gap of {groove_clear_gap} repeat every "
        "{found}, not every {groove_spacing}."
    ),
    about=("groove.clear_gap",),
)
