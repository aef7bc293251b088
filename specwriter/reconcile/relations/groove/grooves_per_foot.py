"""Grooves per foot are twelve inches over the spacing."""

from __future__ import annotations

from specwriter.reconcile.relation import Reciprocal, Relation
from specwriter.reconcile.relations.groove import WHY

RELATION = Relation(
    slug="grooves-per-foot",
    title="grooves per foot and spacing disagree",
    statement="grooves per foot = 12 in / spacing",
    shape=Reciprocal("groove.per_foot", "groove.spacing"),
    why=WHY,
    source="geometry: a count over a length",
    validity="any uniform pattern of parallel grooves",
    sentence="A spacing of {groove_spacing} gives {found}, not {groove_per_foot}.",
    about=("groove.per_foot",),
)
