"""Laws of the ride relations, held against sampled surfaces and the ride engineering itself."""

from __future__ import annotations

from fractions import Fraction
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from specwriter.model import Job
from specwriter.quantity import Interval
from specwriter.reconcile import reconcile
from specwriter.reconcile.registry import all_relations
from specwriter.reconcile.relation import Relation
from specwriter.trade.ride import FOOT, INCH, INCH_PER_MILE, grinder, steps
from specwriter.trade.ride.curl import curl
from tests.support import job

STEP, CURL, SPACING = "joint_match", "conditions.daily_curl", "conditions.joint_spacing"
WAVES = "ride.long_waves"
PARTS = [each for each in all_relations() if each.slug == "roughness-of-the-parts"]
HEIGHTS = st.integers(0, 32).map(lambda count: Fraction(count) * Fraction("0.0254") / 128)
SPACINGS = st.integers(11, 39).map(lambda feet: Fraction(feet) * Fraction("0.3048"))
LEFT = st.integers(0, 150).map(lambda value: Fraction(value, 63360))
DRAWN = {STEP: HEIGHTS, CURL: HEIGHTS, SPACING: SPACINGS, WAVES: LEFT}


def made(at: dict[str, Fraction], floor: float = 0.0) -> float:
    """The roughness of a surface with these parts, from the engineering alone."""
    total = floor
    if STEP in at:
        total = steps.combined(total, float(at[STEP]) * steps.saw_tooth(float(at[SPACING])))
    if CURL in at:
        total = steps.combined(total, float(at[CURL]) * curl(float(at[SPACING])))
    return steps.combined(total, float(at[WAVES])) if WAVES in at else total


@settings(max_examples=60, deadline=None)
@given(relation=st.sampled_from(PARTS), data=st.data())
def test_narrowing_loses_no_surface_that_is_as_rough_as_its_parts(
    relation: Relation, data: st.DataObject
) -> None:
    at: dict[str, Fraction] = {}
    box: dict[str, Interval] = {}
    for name in relation.variables[1:]:
        one, other = data.draw(DRAWN[name]), data.draw(DRAWN[name])
        at[name] = one
        box[name] = Interval(min(one, other), max(one, other))
    roughness = Fraction(made(at))
    box[relation.output] = Interval(Fraction(0), roughness * Fraction(10001, 10000))

    for name in relation.variables:
        truth = roughness if name == relation.output else at[name]
        assert truth in relation.shape.narrow(box, name), name


@settings(max_examples=40, deadline=None)
@given(
    existing=st.integers(80, 250),
    wavelength=st.integers(10, 190),
    wheelbase=st.integers(9, 39),
)
def test_the_wheelbase_relation_turns_back_into_what_it_came_from(
    existing: int, wavelength: int, wheelbase: int
) -> None:
    (relation,) = [each for each in all_relations() if each.slug == "wave-left-by-the-wheelbase"]
    at = {
        "conditions.existing_mri": Fraction(existing, 63360),
        "conditions.existing_wavelength": Fraction(wavelength) * Fraction("0.3048"),
        "equipment.wheelbase": Fraction(wheelbase) * Fraction("0.3048"),
    }
    left = existing * INCH_PER_MILE * grinder.remaining(1 / (wavelength * FOOT), wheelbase * FOOT)
    box = {name: Interval(value, value) for name, value in at.items()}
    box[WAVES] = Interval(Fraction(left) * Fraction(999999, 10**6), Fraction(left))

    for name, value in at.items():
        found = relation.shape.narrow({**box, name: Interval(Fraction(0), None)}, name)
        ends = [float(end) for end in (found.low, found.high) if end is not None]
        assert ends == pytest.approx([float(value)], rel=1e-3), name


def stated(step: int, curl_height: int, limit: int, spacing: int) -> Job:
    patches: dict[str, Any] = {
        "conditions.pavement": "jointed_plain_concrete",
        "conditions.joint_spacing": f"{spacing} ft",
        "areas.mainline.joint_match": f"at most {step}/64 in",
        "areas.mainline.smoothness": {"index": "MRI", "limit": f"at most {limit} in/mi"},
    }
    if curl_height:
        patches["conditions.daily_curl"] = f"{curl_height}/100 in"
    return job("diamond_grinding", patches)


@settings(max_examples=30, deadline=None)
@given(
    step=st.integers(1, 16),
    curl_height=st.integers(0, 12),
    limit=st.integers(40, 120),
    spacing=st.integers(11, 39),
)
def test_the_verdict_is_what_the_engineering_says_of_the_corners(
    step: int, curl_height: int, limit: int, spacing: int
) -> None:
    at = {
        STEP: Fraction(step, 64) * Fraction(INCH),
        CURL: Fraction(curl_height, 100) * Fraction(INCH),
        SPACING: Fraction(spacing * FOOT),
    }
    worst = made(at, 30 * INCH_PER_MILE) / INCH_PER_MILE
    least = made(at | {STEP: Fraction(0)}) / INCH_PER_MILE
    verdicts = reconcile(stated(step, curl_height, limit, spacing)).verdicts
    outcomes = {each.outcome for each in verdicts}

    if worst > limit * 1.01:
        assert outcomes & {"not assured", "not expected"}
    if worst < limit * 0.99:
        assert not outcomes & {"not assured", "not expected"}
    if "not expected" in outcomes:
        # every surface, even the smoothest between the joints and without steps, is too rough
        assert (
            max(least * 0.95, made(at | {STEP: Fraction(0)}, 30 * INCH_PER_MILE) / INCH_PER_MILE)
            > limit * 0.99
        )
    for verdict in verdicts:
        if verdict.outcome == "not assured" and verdict.result is not None:
            point = dict(verdict.result.witness)
            assert point[STEP] <= at[STEP] * Fraction(10**9 + 1, 10**9)
            assert made(point, 30 * INCH_PER_MILE) / INCH_PER_MILE > limit * 0.999
