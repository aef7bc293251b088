"""The same grooves counted over a foot and over a metre."""

from __future__ import annotations

from specwriter.reconcile.relation import Linear, Relation
from specwriter.reconcile.relations.groove import WHY

RELATION = Relation(
    slug="foot-and-metre",
    title="grooves per foot and per metre disagree",
    statement="grooves per metre = grooves per foot x 3.2808",
    shape=Linear({"groove.per_metre": 1, "groove.per_foot": -1}),
    why=WHY,
    source="NIST SP 811, appendix B, 2008: 1 ft is 0.3048 m exactly",
    validity="always",
    sentence="{groove_per_foot} are {found}, not {groove_per_metre}.",
    about=("groove.per_metre",),
)
