"""Blades, spacers and grooves against tables and patterns from outside the project.

Outside checks: the trade's table of grooves per foot (``grooves_per_foot.yaml``); the blade set
of a trade presentation of November 2015 (numbers from memory); the square and trapezoidal
runway patterns of DOT/FAA/TC-TN12/7, pages 29 and 66, 2012.
"""

from __future__ import annotations

from fractions import Fraction
from pathlib import Path
from typing import Any

import pytest
import yaml

from specwriter.quantity import parse
from specwriter.reconcile import findings_of, reconcile
from specwriter.trade import groove_geometry
from specwriter.trade.texture_depth import groove_share
from tests.support import job

TABLE: dict[str, Any] = yaml.load(
    (Path(__file__).parent / "grooves_per_foot.yaml").read_text(encoding="utf-8"),
    Loader=yaml.BaseLoader,
)
ROWS = [
    (core, spacer, per_foot)
    for core, row in TABLE["per_foot"].items()
    for spacer, per_foot in zip(TABLE["spacers"], row, strict=True)
]
MM = Fraction(1, 1000)


def slugs(patches: dict[str, Any]) -> list[str]:
    bare = {"areas.mainline.groove.width": None, "areas.mainline.land.width": None}
    return [each.slug for each in findings_of(reconcile(job("diamond_grinding", bare | patches)))]


@pytest.mark.parametrize(("core", "spacer", "per_foot"), ROWS)
def test_core_and_spacer_make_the_printed_grooves_per_foot(
    core: str, spacer: str, per_foot: str
) -> None:
    pitch = groove_geometry.pitch_of_blades(Fraction(core), Fraction(spacer))

    assert abs(groove_geometry.grooves_per(Fraction(12), pitch) - Fraction(per_foot)) <= Fraction(
        "0.0500001"
    )


@pytest.mark.parametrize(("core", "spacer", "per_foot"), ROWS[::4])
def test_a_job_with_a_printed_set_is_silent_and_one_blade_off_is_not(
    core: str, spacer: str, per_foot: str
) -> None:
    blade = {"core": f"{core} in", "spacer": f"{spacer} in"}
    wrong = round(float(per_foot) + 3, 1)

    assert (
        slugs(
            {
                "areas.mainline.blade": blade,
                "areas.mainline.groove.per_foot": f"{per_foot} per ft",
            }
        )
        == []
    )
    assert slugs(
        {"areas.mainline.blade": blade, "areas.mainline.groove.per_foot": f"{wrong} per ft"}
    ) == ["dimensions-cannot-hold-together"]


def test_segment_and_land_make_the_same_pitch_as_core_and_spacer() -> None:
    segment, core, spacer = Fraction("0.125"), Fraction("0.105"), Fraction("0.110")
    land = groove_geometry.land_of_blades(segment, core, spacer)

    assert land == Fraction("0.090")
    assert groove_geometry.spacing(segment, land) == Fraction("0.215")
    assert groove_geometry.pitch_of_blades(core, spacer) == Fraction("0.215")


def test_square_and_trapezoidal_runway_grooves_hold_the_same_volume() -> None:
    inch = Fraction("25.4")
    square = groove_share(inch / 4, inch / 4, inch / 4, inch * 3 / 2)
    trapezoid = groove_share(inch / 2, inch / 4, inch / 4, inch * 9 / 4)

    assert square == trapezoid
    assert abs(square - Fraction("1.058")) < Fraction("0.0005")


def test_the_edge_of_the_trapezoid_is_the_printed_angle() -> None:
    quarter = Fraction(1, 4)

    angle = groove_geometry.edge_angle(quarter * 2, quarter, quarter)

    assert round(angle) == 117


WIDE = [
    ("10 mm", "10 mm", "80 mm", "1.250", "conference talk on Canadian practice, 2014"),
    ("6 mm", "6 mm", "38 mm", "0.947", "UFC 3-260-02, chapter 21, 2001"),
    ("6 mm", "4 mm", "38 mm", "0.632", "UFC 3-260-02, chapter 21, 2001, least depth"),
    ("4 mm", "6 mm", "25 mm", "0.960", "German road guidance 4.2.5.7, second-hand"),
    ("6 mm", "6 mm", "100 mm", "0.360", "German road guidance 4.2.5.7, second-hand"),
    ("6 mm", "6 mm", "150 mm", "0.240", "German road guidance 4.2.5.7, second-hand"),
    ("0.095 in", "1/8 in", "3/4 in", "0.402", "California Standard Specifications 42-2, 2015"),
    ("0.095 in", "1/4 in", "3/4 in", "0.804", "California Standard Specifications 42-2, 2015"),
    ("0.095 in", "3/16 in", "3/4 in", "0.603", "California Standard Specifications 42-2, 2015"),
    ("0.10 in", "0.15 in", "1 in", "0.381", "Ohio CMS 511.20, 2010"),
]


@pytest.mark.parametrize(("width", "depth", "spacing", "expected", "source"), WIDE)
def test_groove_texture_of_a_published_pattern(
    width: str, depth: str, spacing: str, expected: str, source: str
) -> None:
    w, d, p = (parse(text).amounts[0].base / MM for text in (width, depth, spacing))

    assert abs(groove_share(w, w, d, p) - Fraction(expected)) <= Fraction("0.0006"), source
