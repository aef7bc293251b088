"""A spacing that counts as close lies inside the spacings of a random pattern."""

from __future__ import annotations

from fractions import Fraction

from specwriter.quantity import Interval
from specwriter.reconcile.relation import Linear, Relation

RELATION = Relation(
    slug="close-spacing-in-the-pattern",
    title="no spacing of the random pattern is close",
    statement="the spacing that counts as close is at least the least spacing of the pattern",
    shape=Linear(
        {"groove.close_spacing": 1, "groove.least_spacing": -1}, Interval(Fraction(0), None)
    ),
    why=(
        "A share of a random pattern is to be closely spaced, so that it makes no "
        "tone. Where no spacing of the pattern counts as close, that share cannot be "
        "had."
    ),
    source=(
        "arithmetic; Ohio DOT Construction and Material Specifications, section 511.20, 2010: 3/8 "
        "to 1-3/4 in, half of them under 1 in"
    ),
    validity="random patterns of which a share must be close",
)
