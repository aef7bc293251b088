"""A cut comes out little wider than the segment that makes it."""

from __future__ import annotations

from fractions import Fraction

from specwriter.quantity import Interval
from specwriter.reconcile.relation import Linear, Relation

WIDER = Fraction(11, 10)
"""The widest cut that is not remarked upon, as a multiple of the segment; no source."""

RELATION = Relation(
    slug="cut-wider-than-the-segment",
    title="the groove is to be much wider than the segment that cuts it",
    statement="the groove is at most a tenth wider than the cutting segment",
    shape=Linear({"groove.width": 1, "blade.segment": -WIDER}, Interval(None, Fraction(0))),
    why=(
        "A blade wobbles and cuts a little wider than its rim, but not twice as wide. "
        "A groove far wider than the blade is cut by another blade than the one that "
        "was ordered."
    ),
    source="common practice, no source: a segment that runs true cuts little more than itself",
    validity="one cut a groove; how far a blade wanders has no published bound",
    kind="experience",
    about=("blade.segment",),
)
