"""Slips that are in print, entered as jobs: each is found, and the right form is silent."""

from __future__ import annotations

from typing import Any

import pytest

from specwriter.diagnostic import Grade
from specwriter.quantity import ValueFault, parse
from specwriter.reconcile import findings_of, reconcile
from specwriter.rules import run_rules
from specwriter.worksheet import work_out
from tests.support import job

MAIN, RUNWAY = "areas.mainline", "areas.runway"
SET = {"segment": "0.125 in", "core": "0.105 in", "spacer": "0.110 in"}

GAP = {"width": "6 mm", "depth": "6 mm", "clear_gap": "32 mm"}
COUNT = {"per_foot": "60 per ft"}


def found(base: str, patches: dict[str, Any]) -> list[tuple[Grade, str]]:
    return [(each.grade, each.slug) for each in findings_of(reconcile(job(base, patches)))]


def conflicts(base: str, patches: dict[str, Any]) -> list[str]:
    return [slug for grade, slug in found(base, patches) if grade is Grade.CONFLICT]


def set_with(count: str) -> dict[str, Any]:
    """A printed blade set (trade presentation, November 2015, memory) and a count per foot."""
    return {
        f"{MAIN}.groove": {"width": "0.125 in", "depth": "1/16 in", "per_foot": count},
        f"{MAIN}.land": {"width": "0.090 in"},
        f"{MAIN}.blade": SET,
    }


SLIPS = [
    # 12 / (core + spacer) = 55.8; segment + spacer would give 51.1
    ("diamond_grinding", set_with("51.1 per ft"), set_with("55.8 per ft")),
    # a press record of 2007 gives 3 cm between grooves of 6 mm; read as a spacing it is 38 mm
    (
        "runway_grooving",
        {
            f"{RUNWAY}.groove": {
                "width": "6 mm",
                "depth": "6 mm",
                "clear_gap": "32 mm",
                "spacing": "30 mm",
            }
        },
        {
            f"{RUNWAY}.groove": {
                "width": "6 mm",
                "depth": "6 mm",
                "clear_gap": "32 mm",
                "spacing": "38 mm",
            }
        },
    ),
    # a stored copy of UFC 3-260-02 prints 6 mm beside 3 in: the glyph of 1/4 was lost
    (
        "runway_grooving",
        {f"{RUNWAY}.also_stated": [{"in": "stored copy", "groove": {"depth": "3 in"}}]},
        {f"{RUNWAY}.also_stated": [{"in": "stored copy", "groove": {"depth": "1/4 in"}}]},
    ),
    # 194 per metre is 59.1 per foot; the recalled pair of a guide of 2001 sets 60 beside it
    (
        "diamond_grinding",
        {
            f"{MAIN}.groove": {"per_foot": "60 per ft", "per_metre": "194 per m"},
            f"{MAIN}.land": None,
        },
        {
            f"{MAIN}.groove": {"per_foot": "60 per ft", "per_metre": "197 per m"},
            f"{MAIN}.land": None,
        },
    ),
    # Ohio CMS 511.20, 2010: 0.10 in beside 3 mm
    (
        "transverse_grooving",
        {
            f"{MAIN}.groove.width": "0.10 in",
            f"{MAIN}.also_stated": [{"in": "metric column", "groove": {"width": "3 mm"}}],
        },
        {
            f"{MAIN}.groove.width": "0.10 in",
            f"{MAIN}.also_stated": [{"in": "metric column", "groove": {"width": "2.5 mm"}}],
        },
    ),
]


SLIPS += [
    # 55 to 60 grooves per foot and lands of 0.110 to 0.130 in beside a groove of 0.125 in: the
    # dimensions give 47.1 to 51.1; recalled state ranges of 53 to 57 go together (arithmetic)
    (
        "diamond_grinding",
        {
            f"{MAIN}.groove": {"width": "0.125 in", "per_foot": "55 to 60 per ft"},
            f"{MAIN}.land": {"width": "0.110 in to 0.130 in"},
        },
        {
            f"{MAIN}.groove": {"width": "0.090 in to 0.150 in", "per_foot": "53 to 57 per ft"},
            f"{MAIN}.land": {"width": "0.060 in to 0.130 in"},
        },
    ),
    # Maryland 509, undated copy: 1/2 in of removal and steps of 1/16 in: faults up to 9/16 in
    (
        "diamond_grinding",
        {
            "conditions.existing_faulting": "5/8 in",
            f"{MAIN}.removal": {"depth": "at most 1/2 in"},
            f"{MAIN}.joint_match": "at most 1/16 in",
        },
        {
            "conditions.existing_faulting": "9/16 in",
            f"{MAIN}.removal": {"depth": "at most 1/2 in"},
            f"{MAIN}.joint_match": "at most 1/16 in",
        },
    ),
    # 12 ft lane, 4 ft heads, an overlap asked for and no strip left: three passes give 11.83 ft
    (
        "diamond_grinding",
        {
            "conditions.lane_width": "12 ft",
            f"{MAIN}.equipment": {"head_width": "4 ft"},
            f"{MAIN}.coverage": {"passes": 3, "overlap": "1 in to 2 in"},
        },
        {
            "conditions.lane_width": "12 ft",
            f"{MAIN}.equipment": {"head_width": "4 ft"},
            f"{MAIN}.coverage": {"passes": 4, "overlap": "1 in to 2 in"},
        },
    ),
    # the spacer of a flush grind (0.035 in) is not the land between its grooves (3/8 to 1/2 in)
    (
        "next_generation_concrete_surface",
        {
            f"{MAIN}.groove": {"width": "1/8 in", "depth": "1/8 in", "spacing": "1/2 in to 5/8 in"},
            f"{MAIN}.land": {"width": "0.035 in"},
        },
        {
            f"{MAIN}.groove": {"width": "1/8 in", "depth": "1/8 in", "spacing": "1/2 in to 5/8 in"},
            f"{MAIN}.land": {"width": "3/8 in to 1/2 in"},
        },
    ),
]


@pytest.mark.parametrize(("base", "slip", "right"), SLIPS)
def test_a_printed_slip_is_a_conflict_and_its_right_form_is_none(
    base: str, slip: dict[str, Any], right: dict[str, Any]
) -> None:
    assert conflicts(base, slip)
    assert conflicts(base, right) == []


@pytest.mark.parametrize(
    ("width", "spacing", "assured"), [("6 mm", "38 mm", False), ("1/4 in", "1-1/2 in", True)]
)
def test_the_metric_pattern_of_a_runway_misses_the_target_that_the_inch_pattern_meets(
    width: str, spacing: str, assured: bool
) -> None:
    """UFC 3-260-02, 2001: 0.947 and 1.058 mm about 1.0 mm (ICAO Annex 14, 3.1.24, as quoted)."""
    patches = {
        f"{RUNWAY}.groove": {"width": width, "depth": width, "spacing": spacing},
        f"{RUNWAY}.texture_depth": {"measure": "MTD", "at_least": "1.0 mm", "method": "ASTM E965"},
    }

    assert (found("runway_grooving", patches) == []) is assured


def rules_of(base: str, patches: dict[str, Any]) -> set[str]:
    return {each.slug for each in run_rules(job(base, patches)).findings}


RULED = [
    # a stored copy of Maryland 509 lost its negation
    pytest.param(
        "lost-negation",
        {f"{MAIN}.testing.coverage": {"remedy": "unground surface between passes is permitted"}},
        {f"{MAIN}.testing.coverage": {"remedy": "no unground surface between passes is permitted"}},
        id="the negation is missing",
    ),
    # ASTM E274-97: a skid number is 100 times the ratio of the forces
    pytest.param(
        "friction-scale",
        {f"{MAIN}.friction": {"measure": "SN40S", "at_least": "at least 0.40"}},
        {f"{MAIN}.friction": {"measure": "SN40S", "at_least": "at least 40"}},
        id="a coefficient for a skid number",
    ),
    # the roadside level of NCHRP Report 630, table 9, given for OBSI
    pytest.param(
        "noise-scale",
        {f"{MAIN}.noise": {"measure": "OBSI", "at_most": "78 dB(A)", "speed": "60 mph"}},
        {f"{MAIN}.noise": {"measure": "OBSI", "at_most": "100 dB(A)", "speed": "60 mph"}},
        id="a roadside level for OBSI",
    ),
]


@pytest.mark.parametrize(("slug", "slip", "right"), RULED)
def test_a_printed_slip_is_found_by_its_rule(
    slug: str, slip: dict[str, Any], right: dict[str, Any]
) -> None:
    site = {f"{MAIN}.coverage.unground_strip": "at most 0 in"}
    assert slug in rules_of("diamond_grinding", site | slip)
    assert slug not in rules_of("diamond_grinding", site | right)


def test_the_residue_of_a_printed_area_is_cubic_yards_and_not_cubic_feet() -> None:
    """A trade article (memory, unverified): 50,000 ft2 by 1/8 in as 20 cubic feet, 3,000 lb."""
    patches = {
        f"{MAIN}.limits": [{"roadway": "A", "from": "0+00", "to": "50+00", "width": "10 ft"}],
        f"{MAIN}.removal": {"depth": "1/8 in"},
        f"{MAIN}.groove": None,
    }
    sheet = work_out(job("diamond_grinding", patches))
    values = " ".join(each.value for each in sheet.figures if each.slug == "solids")

    assert "19.3 CY" in values
    assert "37.8 to 39.1 ton" in values


def test_a_speed_in_kilometres_per_inch_is_no_value() -> None:
    """A stored copy of a memorandum of 1 November 1995 prints 65 km/in for 65 km/h."""
    with pytest.raises(ValueFault):
        parse("65 km/in")
    assert parse("65 km/h").dimension == "speed"
