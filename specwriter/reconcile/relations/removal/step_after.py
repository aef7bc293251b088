"""A step at a joint can be ground away only as far as concrete may be removed."""

from __future__ import annotations

from fractions import Fraction

from specwriter.model import Area, Job
from specwriter.quantity import Interval
from specwriter.reconcile.cutting import is_ground
from specwriter.reconcile.relation import Linear, Relation


def _applies(job: Job, area: Area) -> bool:
    return is_ground(area)


RELATION = Relation(
    slug="step-after-removal",
    title="the cap on removal leaves a higher step than is allowed",
    statement="step left at a joint is at least the existing faulting - depth of removal",
    shape=Linear(
        {"joint_match": 1, "conditions.existing_faulting": -1, "removal.depth": 1},
        Interval(Fraction(0), None),
    ),
    why=(
        "A step at a joint is ground away by lowering its high side. Where less may be "
        "removed than the step is high, the rest of it stays, and the joint fails at "
        "each test."
    ),
    source="geometry: the high side of a joint is lowered by what is removed there, no more",
    validity="grinding; some joint is faulted at least as much as the stated mean",
    applies=_applies,
)
