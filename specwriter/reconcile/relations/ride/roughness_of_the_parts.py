"""Steps at joints, curl and long waves against the limit of the roughness index."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from itertools import product

from specwriter.model import Area, Job
from specwriter.reconcile import roughness_of_parts as parts
from specwriter.reconcile.readers.ride import HALF_CAR, ROUGHNESS
from specwriter.reconcile.relation import Function, Relation, Unassured
from specwriter.reconcile.stated_ride import asks_for_half_car, has_step_limit, most
from specwriter.trade.ride.steps import SMOOTHEST

_SCATTER = Fraction(5, 100)
"""Share by which the rule of combination may be off (``steps.COMBINATION_ERROR``), rounded up."""

_WORDS = {
    parts.STEP: "steps at all joints (about 770 in/mi for an inch of step at 15 ft)",
    parts.CURL: "curl (about 780 in/mi for an inch of curl at 15 ft)",
    parts.LONG_WAVES: "the long waves left",
}


_INDEXES = {ROUGHNESS: "roughness index", HALF_CAR: "half-car index"}
"""Joints cross both wheel paths, so each index feels steps and curl in full; waves may differ
from one path to the other, and are looked at in the mean index only."""

_UNASSURED = Unassured(
    slug="ride-not-assured",
    title="steps, curl or waves that are allowed use up the limit of the ride",
)


def _relation(output: str, steps: bool, curl: bool, waves: bool, judged: bool) -> Relation:
    """The relation of an area with these parts; choices are judged where no part is boundless:
    a cap alone sets no limit to the steps that are left."""
    held = dict(zip(_WORDS, (steps, curl, waves), strict=True))
    names = [name for name, is_held in held.items() if is_held]
    words = " and ".join(_WORDS[name] for name in names)
    joints = (parts.SPACING,) if steps or curl else ()
    floor = 0.0 if waves else SMOOTHEST

    def applies(job: Job, area: Area) -> bool:
        if output == HALF_CAR and not asks_for_half_car(area):
            return False
        left = output == ROUGHNESS and parts.has_waves(job, area)
        found = (parts.has_steps(job, area), parts.has_curl(job, area), left)
        bounded = not steps or has_step_limit(area)
        return found == (steps, curl, waves) and bounded is judged

    shape = Function(
        output=output,
        inputs=(*names, *joints),
        value=parts.value(names),
        signs=parts.signs,
        inverses={name: parts.inverse(names, name) for name in names},
        scatter=_SCATTER,
        bound="at_least",
    )
    nominal = Function(
        output=output,
        inputs=shape.inputs,
        value=parts.value(names, floor),
        signs=parts.signs,
        inverses={name: parts.inverse(names, name, floor) for name in names},
        scatter=parts.ROUNDING,
    )
    return Relation(
        slug="roughness-of-the-parts",
        title="what is left in the surface is rougher than the limit",
        statement=f"{_INDEXES[output]} is at least that of {words}",
        shape=shape,
        nominal=nominal if judged else None,
        why=(
            "Each step, each curled slab and each long wave that is allowed takes its part "
            "of the ride. Where together they take all of it, a lane can pass each test "
            "and fail the index."
        ),
        source=(
            "project calculation: quarter-car of AASHTO R 43-13(2017), section 3.1.3, over equal "
            "steps and parabolic slabs"
        ),
        validity="; ".join(_validity(steps, curl, waves)),
        kind="model",
        assures=_UNASSURED if judged else None,
        applies=applies,
        aside=_aside,
    )


def _aside(job: Job, area: Area) -> str:
    limited = asks_for_half_car(area) or most(job, area, ROUGHNESS) is not None
    return parts.joints_outside(job, area) if limited else ""


def _validity(steps: bool, curl: bool, waves: bool) -> Iterator[str]:
    if steps:
        yield "joints 10 ft to 40 ft apart, each with the same step"
    if curl:
        yield "slabs 10 ft to 40 ft long that curl to a parabola"
    yield "error of the combination up to 5 percent"
    if not waves:
        yield "choices are judged with a surface of 30 in/mi between the joints"


RELATIONS = [
    _relation(output, steps, curl, waves, judged)
    for output in _INDEXES
    for steps, curl, waves, judged in product((False, True), repeat=4)
    if (steps or curl or waves) and (steps or judged) and not (waves and output == HALF_CAR)
]
