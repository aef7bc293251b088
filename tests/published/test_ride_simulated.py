"""The ride engineering against independent simulations, geometry and long random roads.

The quarter-car of ``tests.support.ride`` is written with scipy and shares nothing with ours.
"""

from __future__ import annotations

from fractions import Fraction
from math import pi, sqrt

import numpy as np
import pytest
from scipy.linalg import expm

from specwriter.trade import coverage
from specwriter.trade.ride import (
    FOOT,
    INCH,
    INCH_PER_MILE,
    bumps,
    curl,
    faulting,
    footprint,
    half_car,
    lengths,
    profilograph,
    steps,
    straightedge,
)
from specwriter.trade.ride import gain as waves
from specwriter.trade.ride.quarter_car import transition
from specwriter.trade.ride.roughness import motion, roughness, running
from tests.support import ride as independent
from tests.support.ride_roads import (
    chord_of_faulting,
    combination,
    gaps,
    hri_over_mri,
    line_of_the_profile_index,
    profile_index,
    read_by_a_sensor,
    share_over_an_eighth,
    straightedge_on_a_random_surface,
    traces,
    worst_over_base,
)
from tests.support.ride_waves import sine

SAMPLE = 0.025
SHAPES = (bumps.triangle, bumps.haversine, bumps.box)


@pytest.mark.parametrize("step", [0.001, 0.025, 0.1, 0.25, 1.0, 7.0, 60.0])
def test_the_transition_is_the_matrix_exponential_of_a_general_library(step: float) -> None:
    car = transition(step)
    state = expm(independent.A * step / independent.SPEED)
    driven = np.linalg.solve(independent.A, (state - np.eye(4)) @ independent.B).ravel()

    np.testing.assert_allclose(np.array(car.state), state, rtol=1e-9, atol=1e-11)
    np.testing.assert_allclose(np.array(car.drive), driven, rtol=1e-7, atol=1e-11)


@pytest.mark.parametrize("wavelength", [2.0, 2.4, 4.572, 7.62, 15.0])
@pytest.mark.parametrize("step", [0.005, 0.0125, 0.025])
def test_stepping_along_a_wave_gives_the_closed_form(wavelength: float, step: float) -> None:
    closed = waves.roughness_of_sine(0.001, wavelength)

    assert sine(wavelength, step) == pytest.approx(closed, rel=0.002)


@pytest.mark.parametrize("shape", SHAPES)
@pytest.mark.parametrize("step", [0.025, 0.1, 0.25])
def test_stepping_agrees_with_an_independent_simulation(shape: bumps.Shape, step: float) -> None:
    road = bumps.profile(shape, 0.01, 5, step)
    other = independent.motion(np.array(road), step)

    np.testing.assert_allclose(motion(road, step), other, rtol=1e-9, atol=1e-12)


@pytest.mark.parametrize("exponent", [-0.5, 0.0, 0.5])
def test_a_random_road_has_the_roughness_of_its_spectrum(exponent: float) -> None:
    road = independent.random_road(lambda n: 1e-6 * n**exponent, 5000, 0.1, seed=7)
    other = independent.motion(road, 0.1)
    own = roughness(road.tolist(), 0.1)

    assert own == pytest.approx(float(other.mean()), rel=1e-9)
    assert own == pytest.approx(waves.roughness_of_random(lambda n: 1e-6 * n**exponent), rel=0.03)


@pytest.mark.parametrize("feet", [12, 15, 16, 20])
def test_an_endless_road_is_what_a_long_road_tends_to(feet: int) -> None:
    joints, step = feet * FOOT, 0.0254 * 0.5
    slab = round(joints / step)
    tilted = np.array([i // slab - i / slab for i in range(60 * slab)])
    level = np.array([i // slab % 2 for i in range(60 * slab)], dtype=float)
    curled = np.array([(2 * (i % slab) / slab - 1) ** 2 for i in range(60 * slab)])
    for road, endless in (
        (tilted, steps.saw_tooth),
        (level, steps.alternating),
        (curled, curl.curl),
    ):
        moved = independent.motion_by_filter(road, step)[20 * slab : 40 * slab]
        assert endless(joints) == pytest.approx(float(moved.mean()), rel=0.01)


def test_steps_of_random_sign_are_what_a_long_random_road_gives() -> None:
    joints = 15 * FOOT
    slab = round(joints / SAMPLE)
    signs = np.random.default_rng(3).choice([-1.0, 1.0], 1500)
    road = np.repeat(np.cumsum(signs), slab)

    assert steps.random_sign(joints) == pytest.approx(
        float(independent.motion_by_filter(road, SAMPLE).mean()), rel=0.02
    )


@pytest.mark.parametrize("kind", ["resting", "rolling"])
@pytest.mark.parametrize("wavelength", [1.0, 1.524, 2.3, 4.0, 5.0, 7.62, 15.4, 30.0])
def test_the_gap_over_a_wave_is_the_largest_over_all_placements(
    kind: straightedge.Kind, wavelength: float
) -> None:
    length, points = 10 * FOOT, 200
    at = np.arange(points + 1) / points * length
    largest = 0.0
    for start in np.arange(0, wavelength, wavelength / 90):
        heights = np.cos(2 * pi * (start + at) / wavelength)
        if kind == "rolling":
            gap = (heights[0] + heights[-1]) / 2 - heights[points // 2]
        else:
            gap = gap_under(at, heights)
        largest = max(largest, float(gap))

    assert straightedge.gap(wavelength, length, kind) == pytest.approx(largest, abs=0.02)


def is_below(at: independent.Array, heights: independent.Array) -> bool:
    """True where the middle of three points does not stand above the line through the others."""
    return bool(heights[1] <= np.interp(at[1], at[[0, 2]], heights[[0, 2]]))


def gap_under(at: independent.Array, heights: independent.Array) -> float:
    """Largest distance from the upper hull of a profile down to the profile."""
    hull: list[int] = []
    for i in range(len(at)):
        while len(hull) >= 2 and is_below(at[[*hull[-2:], i]], heights[[*hull[-2:], i]]):
            hull.pop()
        hull.append(i)
    return float(np.max(np.interp(at, at[hull], heights[hull]) - heights))


def test_a_rolling_straightedge_is_blind_to_half_its_length() -> None:
    assert straightedge.roughness_at(5 * FOOT, INCH / 8, 10 * FOOT, "rolling") == float("inf")


def test_the_published_model_brackets_the_quarter_car_and_excludes_the_other_print() -> None:
    slopes = chord_of_faulting({"background": 60})

    assert slopes[1] < faulting.COEFFICIENT < slopes[3]
    assert min(slopes) > 0.4929


def test_the_combination_stays_within_its_stated_error() -> None:
    assert combination()["largest"] <= steps.COMBINATION_ERROR


@pytest.mark.parametrize("row", straightedge.ON_RANDOM, ids=lambda row: f"MRI {row.mri}")
def test_the_largest_gaps_on_random_surfaces_lie_in_the_recorded_range(
    row: straightedge.OnRandomSurface,
) -> None:
    low, high = row.largest
    shares = share_over_an_eighth({"mri": row.mri})

    for exponent in (-0.5, 0.0, 0.5):
        assert 0.9 * low <= row.mri * gaps(exponent).max() <= 1.1 * high
    assert row.over[0] * 0.7 - 0.05 <= shares[0] <= shares[1] <= row.over[1] * 1.3 + 0.05


@pytest.mark.parametrize("row", straightedge.ON_RANDOM, ids=lambda row: f"MRI {row.mri}")
def test_the_recorded_gaps_are_those_of_random_surfaces(row: straightedge.OnRandomSurface) -> None:
    found = straightedge_on_a_random_surface({"mri": row.mri})

    assert row.gap_95 == pytest.approx(found["p95"], rel=0.06)
    assert row.gap_99 == pytest.approx(found["p99"], rel=0.06)


@pytest.mark.parametrize("fit", profilograph.FITS, ids=lambda fit: f"band {fit.band}")
def test_the_line_of_a_band_is_that_of_the_simulated_pairs(fit: profilograph.Fit) -> None:
    slope, offset, error = line_of_the_profile_index({"band_in": fit.band})

    assert fit.slope == pytest.approx(slope, rel=0.05)
    assert fit.offset == pytest.approx(offset, abs=2)
    assert fit.error == pytest.approx(error, rel=0.15)


@pytest.mark.parametrize("iri", profilograph.MEANS)
@pytest.mark.parametrize(("place", "band"), list(enumerate((0.0, 0.1, 0.2))))
def test_the_recorded_spread_is_that_of_the_simulated_traces(
    iri: int, place: int, band: float
) -> None:
    found = [profile_index(iri * trace / index, band) for index, trace in traces()[::2]]
    mean, deviation = profilograph.MEANS[iri][place]

    assert mean == pytest.approx(float(np.mean(found)), rel=0.05, abs=0.05)
    assert deviation == pytest.approx(float(np.std(found)), rel=0.06, abs=0.08)


@pytest.mark.parametrize(("place", "band"), [(1, 0.1), (2, 0.2)])
def test_a_band_sees_from_where_its_mean_is_about_its_spread(place: int, band: float) -> None:
    told = [iri for iri, row in profilograph.MEANS.items() if row[place][0] >= 0.9 * row[place][1]]

    assert profilograph.SEES_FROM[band] == min(told)


@pytest.mark.parametrize("fit", profilograph.FITS, ids=lambda fit: f"band {fit.band}")
def test_the_line_of_a_band_passes_through_the_simulated_means(fit: profilograph.Fit) -> None:
    place = profilograph.FITS.index(fit)

    for iri in (80, 100, 130, 160):
        low, high = fit.range_of_iri(profilograph.MEANS[iri][place][0])
        assert low <= iri <= high


@pytest.mark.parametrize("feet", [10, 15, 25, 50, 100])
def test_the_worst_place_of_a_segment_is_what_random_roads_have(feet: int) -> None:
    (simulated,) = worst_over_base({"base_ft": [feet]})

    assert lengths.worst_over_segment(feet * FOOT) == pytest.approx(
        simulated, abs=lengths.WORST_ERROR
    )


@pytest.mark.parametrize("feet", [9, 110])
def test_a_base_that_was_not_simulated_is_refused(feet: int) -> None:
    with pytest.raises(ValueError, match="not known"):
        lengths.worst_over_segment(feet * FOOT)


def test_no_road_has_a_half_car_index_above_its_mean_and_unlike_paths_have_the_least() -> None:
    ratio = hri_over_mri({})

    assert half_car.least_half_car(1.0) == pytest.approx(ratio, abs=0.02)
    left = independent.random_road(lambda n: 1e-6 * n**0, 2000, 0.1, seed=3)
    for alike in (0.0, 0.5, 1.0):
        other = independent.random_road(lambda n: 1e-6 * n**0, 2000, 0.1, seed=4)
        right = alike * left + (1 - alike) * other
        paths = [independent.motion(each, 0.1) for each in (left, right)]
        both = independent.motion((left + right) / 2, 0.1)
        assert both.mean() <= (paths[0].mean() + paths[1].mean()) / 2 * (1 + 1e-9)


def test_the_mildest_and_the_harshest_bump_under_a_template_are_those_recorded() -> None:
    found = []
    for length in np.arange(bumps.BUMP_LENGTHS[0], bumps.BUMP_LENGTHS[1] + 0.01, 0.1):
        road = np.array(bumps.profile(bumps.haversine, 1.0, float(length)))
        moved = independent.motion(road, SAMPLE)
        points = round(25 * FOOT / SAMPLE)
        found.append(np.convolve(moved, np.full(points, 1 / points), "valid").max())

    assert min(found) == pytest.approx(bumps.LEAST_LOCALIZED, rel=0.005)
    assert max(found) == pytest.approx(bumps.MOST_LOCALIZED, rel=0.005)


@pytest.mark.parametrize("tilt", [0.0, 0.5, 1.0])
def test_an_edge_across_a_joint_finds_the_whole_step(tilt: float) -> None:
    """Slabs of 15 ft that are level, or tilted back by a share of the step."""
    slab, edge, points = 15 * FOOT, 10 * FOOT, 400
    at = np.arange(points + 1) / points * edge
    for start in np.arange(0.5, edge, 0.2):
        along = at - start  # the joint lies at 0; behind it the slab is higher by 1
        high = along >= 0
        heights = np.where(high, 1.0 - tilt * along / slab, -tilt * along / slab - tilt)
        assert gap_under(at, heights) >= 1.0 - 0.02


@pytest.mark.parametrize("run_out", [0.3, 1.0, 1.5, 2.0, 4.0, 9.0])
def test_an_edge_across_a_run_out_finds_the_gap_of_its_formula(run_out: float) -> None:
    """A cut of depth 1 that runs out over a length, under every placement of a resting edge."""
    edge, points = 3.0, 120
    at = np.arange(points + 1) / points * edge
    largest = 0.0
    for start in np.arange(-run_out - edge, 0.0, 0.05):
        heights = np.clip(-(start + at) / run_out, 0.0, 1.0)
        largest = max(largest, gap_under(at, heights))

    found = coverage.gap_of_run_out(1, Fraction(run_out), Fraction(edge))
    assert float(found) == pytest.approx(largest, abs=0.03)


@pytest.mark.parametrize("fall", [0.0, 0.5])
def test_a_chord_that_ends_behind_a_step_shows_the_whole_step(fall: float) -> None:
    """A template of 25 ft: its line runs between two points of the surface."""
    template = 25 * FOOT
    behind = np.linspace(0.001, template, 1000)
    heights = 1.0 - fall * behind / template
    line = heights[-1] * behind / template

    assert float((heights - line).max()) >= 0.99


@pytest.mark.parametrize(
    "grooves",
    [(0.125, 0.0625, 0.215), (0.125, 0.1875, 0.75), (0.125, 0.1875, 0.5)],
    ids=["ground", "grooved", "next generation"],
)
def test_what_a_wandering_sensor_reads_is_what_an_independent_road_gives(
    grooves: tuple[float, float, float],
) -> None:
    width, deep, apart = grooves
    widths = [0.0, 0.019, 0.1]
    other = read_by_a_sensor({"w_in": width, "d_in": deep, "p_in": apart, "footprint_m": widths})

    for across, read in zip(widths, other, strict=True):
        own = footprint.false_roughness(*(each * INCH for each in grooves), across)
        assert own / INCH_PER_MILE == pytest.approx(read, rel=0.1, abs=0.6)


def test_a_width_of_whole_spacings_sees_no_grooves() -> None:
    """By luck: 1 in over grooves 1/2 in apart."""
    read = footprint.false_roughness(INCH / 8, 3 * INCH / 16, INCH / 2, INCH)

    assert read / INCH_PER_MILE < 0.05


@pytest.mark.parametrize(("width", "deep", "apart"), [(1 / 8, 3 / 16, 3 / 4), (1 / 4, 1 / 4, 1.5)])
def test_grooves_across_the_lane_average_out_where_the_profile_is_dense(
    width: float, deep: float, apart: float
) -> None:
    """Project calculation, upper bound: 1.0 to 1.3 in/mi for grooves of 1/8 to 1/4 in."""
    at = np.arange(300_000) * 0.001
    road = np.where(at % (apart * INCH) < width * INCH, -deep * INCH, 0.0)
    read = float(independent.motion_by_filter(road, 0.001)[60_000:].mean()) / INCH_PER_MILE

    assert 0.3 < read <= 1.3


def test_the_variation_over_a_segment_is_sqrt_of_the_length() -> None:
    assert lengths.variation(528 * FOOT) == pytest.approx(0.23 * sqrt(25 / 528))


def test_an_index_over_a_short_base_is_the_mean_over_that_base() -> None:
    assert running([1.0, 3.0, 5.0, 7.0], 1.0, 2.0) == [2.0, 4.0, 6.0]
