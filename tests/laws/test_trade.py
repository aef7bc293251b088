"""Laws of areas, passes, reach and scales, over generated inputs."""

from __future__ import annotations

from fractions import Fraction

from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from specwriter.quantity import Interval
from specwriter.trade import coverage, film, friction, quantities, texture_depth
from specwriter.trade.quantities import Stretch
from specwriter.worksheet.reach import reach

LENGTHS = st.integers(0, 8000).map(lambda eighths: Fraction(eighths, 8))
ABOVE_ZERO = st.integers(1, 8000).map(lambda eighths: Fraction(eighths, 8))
SLOW = settings(deadline=None, suppress_health_check=[HealthCheck.too_slow])
"""On a busy machine the drawing alone may take long."""


@st.composite
def stretches(draw: st.DrawFn) -> Stretch:
    return Stretch(
        roadway=draw(st.sampled_from("AB")),
        start=draw(LENGTHS),
        end=draw(LENGTHS),
        width=draw(ABOVE_ZERO),
        lanes=draw(st.frozensets(st.sampled_from("123"), max_size=2)),
    )


@SLOW
@given(st.lists(stretches(), max_size=5))
def test_ground_counted_once_lies_between_the_largest_stretch_and_their_sum(
    listed: list[Stretch],
) -> None:
    once = quantities.area_once(listed)

    assert max((each.area for each in listed), default=Fraction(0)) <= once
    assert once <= sum(each.area for each in listed)
    assert quantities.area_once([*listed, *listed]) == once


@SLOW
@given(ABOVE_ZERO, ABOVE_ZERO, st.fractions(0, Fraction(9, 10), max_denominator=10))
def test_the_passes_needed_cover_the_lane_and_one_fewer_does_not(
    lane: Fraction, head: Fraction, share: Fraction
) -> None:
    overlap = head * share
    needed = coverage.passes_needed(lane, head, overlap)

    assert coverage.strip_left(lane, needed, head, overlap) == 0
    if needed > 1:
        assert coverage.strip_left(lane, needed - 1, head, overlap) > 0


@SLOW
@given(
    st.fractions(Fraction(1, 2), 1, max_denominator=100),
    ABOVE_ZERO,
    st.fractions(Fraction(1, 8), 4, max_denominator=16),
)
def test_the_grooves_forgiven_keep_the_share_and_one_more_does_not(
    share: Fraction, window: Fraction, spacing: Fraction
) -> None:
    lost = coverage.grooves_forgiven(share, window, spacing)

    assert 1 - lost * spacing / window >= share
    assert 1 - (lost + 1) * spacing / window < share


@SLOW
@given(ABOVE_ZERO, ABOVE_ZERO, ABOVE_ZERO, ABOVE_ZERO, st.fractions(0, 1, max_denominator=20))
def test_every_value_inside_the_intervals_lies_in_the_reach(
    a: Fraction, b: Fraction, c: Fraction, d: Fraction, at: Fraction
) -> None:
    first, second = Interval(min(a, b), max(a, b)), Interval(min(c, d), max(c, d))
    x, y = (min(pair) + abs(pair[0] - pair[1]) * at for pair in ((a, b), (c, d)))

    assert x / y in reach(lambda x, y: x / y, (first, second))


@SLOW
@given(ABOVE_ZERO, st.sampled_from(list(texture_depth.CONVERSION_SOURCES)))
def test_a_scale_turned_round_gives_the_profile_depth_again(
    depth: Fraction, form: texture_depth.Conversion
) -> None:
    assert texture_depth.mpd_of_etd(texture_depth.etd_of_mpd(depth, form), form) == depth


@SLOW
@given(st.floats(0.2, 2.5), st.floats(20, 60), st.floats(30, 130))
def test_friction_falls_with_speed_by_both_models(mpd: float, number: float, speed: float) -> None:
    slow = friction.SkidNumber(value=number, speed=speed)
    models: tuple[friction.SpeedModel, ...] = ("friction index", "exponential skid number")

    for model in models:
        fast = friction.skid_number_at(slow, speed + 10, model, mpd=mpd, mtd=mpd)
        assert 0 < fast.value < number
        back = friction.skid_number_at(fast, speed, model, mpd=mpd, mtd=mpd)
        assert abs(back.value - number) < 1e-6


@SLOW
@given(st.floats(1, 15), st.floats(5, 150), st.floats(0.005, 0.08), st.floats(0, 0.08))
def test_a_grade_lengthens_the_path_and_steepens_it(
    width: float, rain: float, cross: float, grade: float
) -> None:
    path, slope = film.drainage_path(width, cross, grade), film.resultant_slope(cross, grade)

    assert path >= width
    assert slope >= max(cross, grade)
    assert film.depth_1968(path, rain, slope) > 0
