"""A groove is not narrower than the segment that cuts it."""

from __future__ import annotations

from fractions import Fraction

from specwriter.quantity import Interval
from specwriter.reconcile.relation import Linear, Relation

RELATION = Relation(
    slug="segment-in-groove",
    title="groove width and cutting segment disagree",
    statement="the cutting segment is at most as thick as the groove is wide",
    shape=Linear({"groove.width": 1, "blade.segment": -1}, Interval(Fraction(0), None)),
    why=(
        "A saw cannot cut a slot that is narrower than its own rim. Where the groove "
        "is narrower than the blade, no such groove can be cut with it."
    ),
    source="geometry: a saw cut is at least as wide as the cutting rim",
    validity="saw-cut grooves",
    sentence=(
        "A segment of {blade_segment} cannot cut a groove of {groove_width}: the cut is "
        "at least as wide as the segment."
    ),
    about=("blade.segment", "blade.core", "blade.spacer"),
)
