"""Slips that are in print, entered as jobs: each is found, and the right form is silent."""

from __future__ import annotations

from typing import Any

import pytest

from specwriter.diagnostic import Grade
from specwriter.reconcile import findings_of, reconcile
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
