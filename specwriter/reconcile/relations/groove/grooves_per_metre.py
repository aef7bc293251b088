"""Grooves per metre are one metre over the spacing."""

from __future__ import annotations

from specwriter.reconcile.relation import Reciprocal, Relation
from specwriter.reconcile.relations.groove import WHY

RELATION = Relation(
    slug="grooves-per-metre",
    title="grooves per metre and spacing disagree",
    statement="grooves per metre = 1000 mm / spacing",
    shape=Reciprocal("groove.per_metre", "groove.spacing"),
    why=WHY,
    source="geometry: a count over a length",
    validity="any uniform pattern of parallel grooves",
    sentence="A spacing of {groove_spacing} gives {found}, not {groove_per_metre}.",
    about=("groove.per_metre",),
)
