"""Film and onset speed: which way each input pushes, and where the relations stand aside."""

from __future__ import annotations

import pytest

from specwriter.trade import film, hydroplaning

USUAL = {"texture": 0.8, "path": 7.3, "rain": 50.0, "slope": 0.02}


@pytest.mark.parametrize(
    ("change", "rises"),
    [
        ({"path": 11.0}, True),
        ({"rain": 100.0}, True),
        ({"slope": 0.03}, False),
        ({"texture": 1.2}, False),
    ],
)
def test_the_film_moves_the_way_the_road_teaches(change: dict[str, float], rises: bool) -> None:
    moved, usual = film.film_1979(**USUAL | change), film.film_1979(**USUAL)

    assert (moved > usual) is rises


@pytest.mark.parametrize(
    ("change", "expected"),
    [
        ({}, ()),
        ({"slope": 0.004}, ("slope",)),
        ({"slope": 0.09}, ("slope",)),
        ({"rain": 160.0}, ("rain",)),
        ({"path": 16.0}, ("path",)),
        ({"texture": 0.05, "path": 20.0}, ("path", "texture")),
    ],
)
def test_inputs_beyond_the_fitted_range_are_named(
    change: dict[str, float], expected: tuple[str, ...]
) -> None:
    assert film.outside_1979(**USUAL | change) == expected


def test_a_level_road_has_the_path_of_its_width() -> None:
    assert film.drainage_path(7.3, 0.02, 0) == 7.3
    assert film.resultant_slope(0.02, 0) == 0.02


def test_concrete_in_sheet_flow_is_rougher_than_dense_asphalt() -> None:
    flow = film.reynolds(7.3, 50)

    assert flow == pytest.approx(101.4, abs=0.1)
    assert film.roughness_of_concrete(flow) < film.roughness_of_dense_asphalt(flow)
    assert film.depth_1968(7.3, 50, 0.02) == pytest.approx(1.98, abs=0.01)


@pytest.mark.parametrize("depth", [0.0, -0.01])
def test_no_film_above_the_texture_gives_no_speed(depth: float) -> None:
    with pytest.raises(ValueError, match="no film"):
        hydroplaning.speed_1979(depth, 0.03, 30, 3, 10)
    with pytest.raises(ValueError, match="no film"):
        hydroplaning.speed_1998(depth, 0.03)


def test_the_two_speed_relations_part_on_a_thin_film_and_meet_on_a_thick_one() -> None:
    thin, thick = 0.5 / 25.4, 3 / 25.4
    texture = 0.8 / 25.4

    assert hydroplaning.speed_1998(thin, texture) - hydroplaning.speed_1979(
        thin, texture, 24, 3, 10
    ) == pytest.approx(17, abs=0.2)
    assert hydroplaning.speed_1998(thick, texture) == pytest.approx(
        hydroplaning.speed_1979(thick, texture, 24, 3, 10), abs=0.1
    )


def test_the_film_turned_round_gives_path_rain_and_slope_back() -> None:
    """At the worked film of 0.97 mm: 7.3 m, 50 mm/h, 2 percent and 0.8 mm."""
    above = film.film_1979(0.8, 7.3, 50, 0.02)

    assert film.path_of_1979(above, 0.8, 50, 0.02) == pytest.approx(7.3)
    assert film.rain_of_1979(above, 0.8, 7.3, 0.02) == pytest.approx(50)
    assert film.slope_of_1979(above, 0.8, 7.3, 50) == pytest.approx(0.02)


@pytest.mark.parametrize(("water", "texture"), [(0.02, 0.012), (0.08, 0.031), (0.12, 0.06)])
def test_the_onset_speed_turned_round_gives_the_film_back(water: float, texture: float) -> None:
    speed = hydroplaning.speed_1979(water, texture, 24, 3, 10)

    assert hydroplaning.film_at_1979(speed, texture, 24, 3, 10) == pytest.approx(water)


def test_a_speed_below_the_onset_on_every_film_has_no_film() -> None:
    with pytest.raises(ValueError, match="no film"):
        hydroplaning.film_at_1979(10, 0.03, 24, 3, 10)
