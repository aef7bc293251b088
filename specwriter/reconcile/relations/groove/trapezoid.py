"""A saw-cut groove is not wider at its bottom than at its top."""

from __future__ import annotations

from fractions import Fraction

from specwriter.model import Area, Job
from specwriter.quantity import Interval
from specwriter.reconcile.relation import Linear, Relation
from specwriter.reconcile.requirement import sources


def is_trapezoid(job: Job, area: Area) -> bool:
    """True where a width at the bottom is stated anywhere."""
    return any(
        each.groove is not None and each.groove.width_at_bottom is not None
        for each in sources(area)
    )


RELATION = Relation(
    slug="trapezoid",
    title="the groove is wider at the bottom than at the top",
    statement="groove width at the bottom is at most the groove width",
    shape=Linear({"groove.width": 1, "groove.width_at_bottom": -1}, Interval(Fraction(0), None)),
    why=(
        "A groove that is wider at the bottom than at the top cannot be cut by a saw. "
        "Mostly top and bottom were interchanged."
    ),
    source="DOT/FAA/TC-TN12/7, page 29, 2012: the trapezoidal groove is wider at the top",
    validity="square and trapezoidal grooves",
    sentence=(
        "A groove {groove_width_at_bottom} wide at the bottom and {groove_width} at the "
        "top cannot be sawn."
    ),
    applies=is_trapezoid,
)
