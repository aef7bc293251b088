"""One pass takes no more than all of them together."""

from __future__ import annotations

from fractions import Fraction

from specwriter.quantity import Interval
from specwriter.reconcile.relation import Linear, Relation

RELATION = Relation(
    slug="pass-and-whole",
    title="one pass is to take more than all passes may",
    statement="depth of removal in one pass is at most the depth of removal",
    shape=Linear({"removal.depth": 1, "removal.depth_per_pass": -1}, Interval(Fraction(0), None)),
    why=(
        "One pass is a part of the whole. Where a single pass may take more than all "
        "of them together, one of the two limits is never applied."
    ),
    source="arithmetic",
    validity="always",
    about=("removal.depth_per_pass",),
)
