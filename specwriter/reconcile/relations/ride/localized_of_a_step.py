"""A single step at a joint against the limit of localized roughness."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction
from typing import Any, Literal

from specwriter.model import Area, Job
from specwriter.quantity import Interval
from specwriter.reconcile.governing_ride import localized_governed_by
from specwriter.reconcile.readers.ride import BASE, LOCALIZED
from specwriter.reconcile.relation import Function, Relation, Unassured
from specwriter.reconcile.relations.ride import WHY_STEPS
from specwriter.reconcile.roughness_of_parts import (
    ROUNDING,
    STEP,
    has_joints,
    has_steps,
    joints_outside,
)
from specwriter.reconcile.shape import Values
from specwriter.reconcile.stated_ride import has_step_limit, most
from specwriter.trade.ride.steps import SMOOTHEST, combined, localized, room_for

_UNASSURED = Unassured(
    slug="step-breaks-the-localized-limit",
    title="a single step that is allowed breaks the localized limit",
)
_SCATTER = Fraction(2, 100)
"""What the sample interval and the direction of travel change."""


def _signs(at: Mapping[str, Interval]) -> dict[str, int | None]:
    return {STEP: 1, BASE: -1}


def _per_step(at: Values) -> float:
    """Roughness of a step of one metre; the base as coarse as it needs to be, so that few values
    are ever simulated."""
    return localized(round(float(at[BASE]), 2))


def _over(floor: float, scatter: Fraction, bound: Literal["equal", "at_least"]) -> Function:
    """The step over a surface that is ``floor`` rough beside the joint."""

    def value(at: Values) -> float:
        return combined(floor, _per_step(at) * float(at[STEP]))

    def step(roughness: Any, at: Values) -> float:
        return room_for(float(roughness), floor) / _per_step(at)

    return Function(
        output=LOCALIZED,
        inputs=(STEP, BASE),
        value=value,
        signs=_signs,
        inverses={STEP: step},
        scatter=scatter,
        bound=bound,
    )


def _aside(job: Job, area: Area) -> str:
    limited = most(job, area, LOCALIZED) is not None
    return joints_outside(job, area) if limited else ""


def _relation(judged: bool) -> Relation:
    """With ``judged`` a step at its tolerance is looked at too; a cap alone sets none."""

    def applies(job: Job, area: Area) -> bool:
        if not (has_joints(job, area) and has_steps(job, area)):
            return False
        governs = has_step_limit(area) and localized_governed_by(job, area) == "step"
        return governs is judged

    return Relation(
        slug="localized-of-a-step",
        title="a single step breaks the localized limit",
        statement=(
            "localized roughness is at least that of a single step at a joint (about 557 in/mi "
            "for an inch of step over a base of 25 ft)"
        ),
        shape=_over(0.0, _SCATTER, "at_least"),
        nominal=_over(SMOOTHEST, ROUNDING, "equal") if judged else None,
        why=WHY_STEPS,
        source=(
            "project calculation: quarter-car of AASHTO R 43-13(2017), section 3.1.3, over a "
            "single step"
        ),
        validity=(
            "a step on a level surface; at the tolerance a surface of 30 in/mi beside the joint "
            "is taken"
        ),
        kind="model",
        assures=_UNASSURED if judged else None,
        applies=applies,
        aside=_aside,
    )


RELATIONS = [_relation(judged) for judged in (True, False)]
