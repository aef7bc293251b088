"""A bump template of 25 ft against a step at a joint, and beside a limit of roughness."""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction

from specwriter.model import Area, Job
from specwriter.quantity import Interval
from specwriter.reconcile.readers.ride import BASE, BUMP, LOCALIZED
from specwriter.reconcile.relation import Linear, Relation, Unassured
from specwriter.reconcile.roughness_of_parts import STEP
from specwriter.reconcile.stated_ride import has_step_limit, lies_on, most
from specwriter.trade.ride import FOOT
from specwriter.trade.ride.bumps import BUMP_LENGTHS, LEAST_LOCALIZED, MOST_LOCALIZED

_LEAST = Fraction(LEAST_LOCALIZED).limit_denominator(10**6)
_MOST = Fraction(MOST_LOCALIZED).limit_denominator(10**6)
_WORDS = (
    f"a rounded bump of {BUMP_LENGTHS[0]:g} m to {BUMP_LENGTHS[1]:g} m makes between about 460 "
    "and 750 in/mi over 25 ft for an inch of its height"
)


def _applies(template_is_looser: bool) -> Callable[[Job, Area], bool]:
    """Both limits, and on which side of the range of bumps they lie."""

    def applies(job: Job, area: Area) -> bool:
        bump, localized = most(job, area, BUMP), most(job, area, LOCALIZED)
        if bump is None or localized is None or has_step_limit(area):
            return False
        if not lies_on(most(job, area, BASE), 25 * FOOT):
            return False
        looser = bump * _LEAST > localized
        return looser if template_is_looser else bump * _MOST < localized

    return applies


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
        source="project calculation: quarter-car of AASHTO R 43-13(2017), section 3.1.3, over "
        "single haversine bumps",
        validity="single bumps on an otherwise level surface; a screen, and no conversion",
        kind="model",
        assures=Unassured(
            slug=f"{name}-stricter-than-its-partner",
            title="bump template and localized limit are not of one quality",
        ),
        applies=_applies(template_is_looser),
    )


def _has_steps(job: Job, area: Area) -> bool:
    return has_step_limit(area)


RELATIONS = [
    Relation(
        slug="bump-of-a-step",
        title="a step at a joint that is allowed fails the bump template",
        statement=(
            "the bump under a template of 25 ft that ends just behind a step is at least the step"
        ),
        shape=Linear({BUMP: 1, STEP: -1}, Interval(Fraction(0), None)),
        nominal=Linear({BUMP: 1, STEP: -1}),
        source=(
            "geometry; templates: Florida DOT Standard Specifications, 400-15.2.5.5 (0.3 in), "
            "UFGS 02753 (0.4 in)"
        ),
        validity="slabs that are level, or fall away behind the step",
        kind="model",
        assures=Unassured(
            slug="step-fails-the-bump-template",
            title="a step at a joint that is allowed fails the bump template",
        ),
        applies=_has_steps,
    ),
    _beside(template_is_looser=True),
    _beside(template_is_looser=False),
]
