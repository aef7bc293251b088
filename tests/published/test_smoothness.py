"""Outside checks of the ride rules: definitions in standards, and limits that agencies printed.

AASHTO R 43-13(2017), sections 3.1.1 and 3.1.3: IRI of one wheel-path profile, MRI of two.
ASTM E1274-03(2012) and E2955-13(2019): the profilograph, and its simulation from a profile.
Maine DOT section 401, as compiled by a third party, undated: 0.947 m/km beside 60.00 in/mi.
Georgia, Connecticut, New Jersey, Florida: bands of agency tables, compiled by a third party.
"""

from __future__ import annotations

from typing import Any

import pytest

from specwriter.quantity import UNITS, parse
from specwriter.rules import all_rules, run_rules
from specwriter.rules.places import INCH_PER_MILE
from tests.support import job

RIDE = "areas.mainline.smoothness"


def slugs(ride: dict[str, Any], base: str = "diamond_grinding") -> list[str]:
    asked = [rule for rule in all_rules() if not rule.rule.gap]
    return [finding.slug for finding in run_rules(job(base, {RIDE: ride}), asked).findings]


PROFILED = {"instrument": "inertial_profiler", "sensor": "line_laser", "sensor_width": "4 in"}


@pytest.mark.parametrize(
    ("ride", "expected"),
    [
        pytest.param({"index": "IRI", **PROFILED, "wheel_paths": "left"}, [], id="IRI of one path"),
        pytest.param({"index": "MRI", **PROFILED, "wheel_paths": "both"}, [], id="MRI of two"),
        pytest.param(
            {"index": "MRI", **PROFILED, "wheel_paths": "left"},
            ["mean-index-needs-both-wheel-paths"],
            id="MRI of one",
        ),
        pytest.param(
            {"index": "PI", "blanking_band": "0.2 in", **PROFILED, "simulated": True},
            [],
            id="simulated profilograph",
        ),
        pytest.param(
            {"index": "PI", "blanking_band": "0.2 in", **PROFILED},
            ["index-instrument"],
            id="profile index straight from a profiler",
        ),
        pytest.param(
            {"index": "IRI", "instrument": "profilograph"}, ["index-instrument"], id="no profile"
        ),
    ],
)
def test_the_definitions_of_the_indexes_hold(ride: dict[str, Any], expected: list[str]) -> None:
    assert slugs(ride) == expected


@pytest.mark.parametrize(
    ("index", "limit"),
    [
        pytest.param("MRI", "at most 40 in/mi", id="Alaska, lowest band"),
        pytest.param("IRI", "at most 0.789 m/km", id="Connecticut, lowest band"),
        pytest.param("IRI", "at most 1.893 m/km", id="Connecticut, correction"),
        pytest.param("IRI", "at most 170 in/mi", id="New Jersey, correction"),
        pytest.param("HRI", "at most 825 mm/km", id="Georgia, half-car"),
        pytest.param("PI", "at most 2 in/mi", id="Florida, incentive with a 0.2 in band"),
        pytest.param("PI", "at most 40 in/mi", id="Kansas, correction with no band"),
    ],
)
def test_a_limit_that_an_agency_prints_is_believed(index: str, limit: str) -> None:
    band = {"blanking_band": "0.2 in"} if index == "PI" else {}

    assert slugs({"index": index, "limit": limit, **band}) == []


@pytest.mark.parametrize(
    ("figure", "printed_in", "meant"),
    [("60.00", "m/km", "in/mi"), ("0.947", "in/mi", "m/km"), ("825", "m/km", "mm/km")],
)
def test_a_printed_figure_under_the_wrong_unit_is_not_believed(
    figure: str, printed_in: str, meant: str
) -> None:
    assert slugs({"index": "HRI", "limit": f"at most {figure} {meant}"}) == []
    assert slugs({"index": "HRI", "limit": f"at most {figure} {printed_in}"}) == ["index-unit"]


def test_the_two_units_of_roughness_stand_as_one_to_63_36() -> None:
    assert UNITS["m/km"].factor / UNITS["in/mi"].factor == parse("63.36 in/mi").amounts[0].value
    assert UNITS["in/mi"].factor == INCH_PER_MILE


def test_a_line_of_4_in_covers_grooves_three_quarters_apart_but_not_one_of_1_in() -> None:
    """AASHTO R 56-14(2018): a line is typically 4 in long; 4 in over 3/4 in is 5.3 spacings."""
    ride = {"index": "MRI", **PROFILED, "wheel_paths": "both"}

    assert slugs(ride, "longitudinal_grooving") == []
    assert slugs({**ride, "sensor_width": "1 in"}, "longitudinal_grooving") == [
        "line-width-against-spacing"
    ]
