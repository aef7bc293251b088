"""Laws of the ride engineering: what must hold for any road, step and limit."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from specwriter.trade.ride import INCH_PER_MILE, bumps, improvement, steps
from specwriter.trade.ride.quarter_car import transition
from specwriter.trade.ride.roughness import accumulated_travel, roughness

SAMPLE = 0.05
HEIGHTS = st.floats(-0.02, 0.02)
BUMPS = st.tuples(st.sampled_from([bumps.triangle, bumps.haversine]), HEIGHTS, st.floats(1.0, 8.0))
SPACINGS = st.floats(3.0, 9.0)
SLOPES = st.floats(20, 200).map(lambda value: value * INCH_PER_MILE)


@st.composite
def roads(draw: st.DrawFn) -> list[float]:
    """Up to three bumps one behind the other, on a grade, with level ends."""
    road: list[float] = []
    for shape, height, length in draw(st.lists(BUMPS, min_size=1, max_size=3)):
        road += bumps.profile(shape, height, length, SAMPLE)
    return road


@settings(max_examples=25, deadline=None)
@given(road=roads(), factor=st.floats(0.01, 100), other=roads())
def test_roughness_is_linear_in_height_and_never_more_than_its_parts(
    road: list[float], factor: float, other: list[float]
) -> None:
    length = min(len(road), len(other))
    one, two = road[:length], other[:length]
    together = [a + b for a, b in zip(one, two, strict=True)]

    scaled = roughness([factor * height for height in road], SAMPLE)
    assert scaled == pytest.approx(factor * roughness(road, SAMPLE), rel=1e-9, abs=1e-15)
    assert roughness([-height for height in road], SAMPLE) == pytest.approx(
        roughness(road, SAMPLE), rel=1e-9
    )
    assert roughness(together, SAMPLE) <= roughness(one, SAMPLE) + roughness(two, SAMPLE) + 1e-15


@settings(max_examples=25, deadline=None)
@given(road=roads(), grade=st.floats(-0.08, 0.08))
def test_a_grade_adds_no_roughness(road: list[float], grade: float) -> None:
    sloped = [height + grade * i * SAMPLE for i, height in enumerate(road)]

    assert roughness(sloped, SAMPLE) == pytest.approx(roughness(road, SAMPLE), abs=1e-12)


@settings(max_examples=25, deadline=None)
@given(shape=st.sampled_from([bumps.triangle, bumps.haversine]), length=st.floats(1.0, 8.0))
def test_a_bump_is_as_rough_when_it_is_driven_backwards(shape: bumps.Shape, length: float) -> None:
    road = [0.0] * 1000 + bumps.profile(shape, 0.01, length, SAMPLE)

    there = accumulated_travel(road, SAMPLE)
    back = accumulated_travel([0.0] * 1000 + road[::-1] + [0.0] * 1000, SAMPLE)
    assert there == pytest.approx(back, rel=0.005)


@settings(max_examples=25, deadline=None)
@given(length=st.floats(3.0, 8.0), parts=st.integers(1, 10))
def test_the_sample_interval_does_not_change_what_a_bump_makes(length: float, parts: int) -> None:
    fine, coarse = 0.01, 0.01 * parts

    def bump(step: float) -> list[float]:
        at = [index * step for index in range(round((75 + length) / step))]
        return [max(0.0, 0.01 * (1 - abs(2 * (x - 15) / length - 1))) for x in at]

    assert accumulated_travel(bump(coarse), coarse) == pytest.approx(
        accumulated_travel(bump(fine), fine), rel=0.005
    )


@settings(max_examples=50, deadline=None)
@given(step=st.floats(0.001, 5.0))
def test_two_steps_make_one_of_double_length(step: float) -> None:
    half, whole = transition(step), transition(2 * step)
    for start in ((1.0, 0.0, 0.0, 0.0), (0.0, 0.3, -1.0, 2.0)):
        _, twice = half.run([0.02, 0.02], start)
        _, once = whole.run([0.02], start)
        assert twice == pytest.approx(once, rel=1e-9, abs=1e-10)


@settings(max_examples=25, deadline=None)
@given(spacing=SPACINGS)
def test_no_pattern_of_steps_is_rougher_than_steps_that_do_not_meet(spacing: float) -> None:
    most = steps.isolated(spacing)

    assert 0 < steps.saw_tooth(spacing) <= most
    assert 0 < steps.alternating(spacing) <= most * 1.001
    assert 0 < steps.random_sign(spacing) <= most * 1.03


@given(background=SLOPES, more=st.floats(0, 1), part=SLOPES)
def test_the_combination_grows_with_each_part_and_stays_between_most_and_sum(
    background: float, more: float, part: float
) -> None:
    together = steps.combined(background, part)

    assert max(background, part) <= together <= background + part
    assert steps.combined(background * (1 + more), part) >= together * (1 - 1e-12)
    assert steps.combined(part, background) == together
    assert steps.combined(background, 0.0) == background
    assert steps.combined(0.0, 0.0) == 0.0


@given(limit=SLOPES, background=SLOPES, spacing=SPACINGS)
def test_the_affordable_step_uses_up_the_limit(
    limit: float, background: float, spacing: float
) -> None:
    step = steps.affordable_step(limit, background, spacing)

    if background >= limit:
        assert step == 0
    else:
        made = steps.combined(background, step * steps.saw_tooth(spacing))
        assert made == pytest.approx(limit, rel=1e-6)


@given(cap=SLOPES, share=st.floats(0.0, 0.9))
def test_cap_and_improvement_meet_at_the_crossover(cap: float, share: float) -> None:
    before = improvement.crossover(cap, share)

    assert improvement.after(before, share) == pytest.approx(cap)


@pytest.mark.parametrize("spacing", [0.2, 0.99, -1.0, float("nan")])
def test_joints_closer_than_the_calculation_covers_are_refused(spacing: float) -> None:
    with pytest.raises(ValueError, match="outside the range"):
        steps.saw_tooth(spacing)
