"""A bump template of 25 ft against a step at a joint, and beside a limit of roughness."""

from __future__ import annotations

from fractions import Fraction

from specwriter.model import Area, Job
from specwriter.quantity import Interval
from specwriter.reconcile.governing_ride import bump_governed_by, localized_governed_by
from specwriter.reconcile.readers.ride import BUMP, LOCALIZED
from specwriter.reconcile.relation import Linear, Relation, Unassured
from specwriter.reconcile.relations.ride import WHY_STEPS, WHY_TWO_LIMITS
from specwriter.reconcile.roughness_of_parts import STEP
from specwriter.reconcile.stated_ride import has_step_limit, leaves_steps
from specwriter.trade.ride.bumps import BUMP_LENGTHS, LEAST_LOCALIZED, MOST_LOCALIZED

_LEAST = Fraction(LEAST_LOCALIZED).limit_denominator(10**6)
_MOST = Fraction(MOST_LOCALIZED).limit_denominator(10**6)
_WORDS = (
    f"a rounded bump of {BUMP_LENGTHS[0]:g} m to {BUMP_LENGTHS[1]:g} m makes between about 460 "
    "and 750 in/mi over 25 ft for an inch of its height"
)


def _bump_is_looked_at(job: Job, area: Area) -> bool:
    return localized_governed_by(job, area) == "bump"


def _localized_is_looked_at(job: Job, area: Area) -> bool:
    return bump_governed_by(job, area) == "localized"


def _beside(template_is_looser: bool) -> Relation:
    output, other = (LOCALIZED, BUMP) if template_is_looser else (BUMP, LOCALIZED)
    factor = _LEAST if template_is_looser else 1 / _MOST
    name = "localized-limit" if template_is_looser else "bump-template"
    return Relation(
        slug="bump-and-localized-roughness",
        title="bump template and localized limit are not of one quality",
        statement=_WORDS,
        shape=Linear({output: 1, other: -factor}, Interval(None, None)),
        nominal=Linear({output: 1, other: -factor}),
        why=WHY_TWO_LIMITS,
        source="project calculation: quarter-car of AASHTO R 43-13(2017), section 3.1.3, over "
        "single haversine bumps",
        validity="single bumps on an otherwise level surface; a screen, and no conversion",
        kind="model",
        assures=Unassured(
            slug=f"{name}-stricter-than-its-partner",
            title="bump template and localized limit are not of one quality",
        ),
        applies=_bump_is_looked_at if template_is_looser else _localized_is_looked_at,
    )


def _of_a_step(judged: bool) -> Relation:
    """With ``judged`` the step is what makes the bump; else it is the least that there is."""

    def applies(job: Job, area: Area) -> bool:
        stated = has_step_limit(area) or leaves_steps(job, area)
        return stated and (bump_governed_by(job, area) == "step") is judged

    return Relation(
        slug="bump-of-a-step",
        title="a step at a joint that is allowed fails the bump template",
        statement=(
            "the bump under a template of 25 ft that ends just behind a step is at least the step"
        ),
        shape=Linear({BUMP: 1, STEP: -1}, Interval(Fraction(0), None)),
        nominal=Linear({BUMP: 1, STEP: -1}) if judged else None,
        why=WHY_STEPS,
        source=(
            "geometry; templates: Florida DOT Standard Specifications, 400-15.2.5.5 (0.3 in), "
            "UFGS 02753 (0.4 in)"
        ),
        validity="slabs that are level, or fall away behind the step",
        kind="model",
        about=(BUMP,),
        assures=_UNASSURED if judged else None,
        applies=applies,
    )


_UNASSURED = Unassured(
    slug="step-fails-the-bump-template",
    title="a step at a joint that is allowed fails the bump template",
)
RELATIONS = [
    _of_a_step(judged=True),
    _of_a_step(judged=False),
    _beside(template_is_looser=True),
    _beside(template_is_looser=False),
]
