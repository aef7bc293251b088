"""The table of an area: what each verdict says, and that an estimate is not called a proof."""

from __future__ import annotations

from typing import Any

import pytest

from specwriter.reconcile import reconcile
from specwriter.report.area_table import rows_of
from tests.support import job

MAIN = "areas.mainline"
SITE = {"conditions.pavement": "jointed_plain_concrete", "conditions.joint_spacing": "15 ft"}
RIDE = {"index": "MRI", "limit": "at most 75 in/mi"}

ROWS: dict[str, tuple[str, dict[str, Any], tuple[str, str, str, str]]] = {
    # a band of levels is known from memory only
    "experience": (
        "next_generation_concrete_surface",
        {f"{MAIN}.noise": {"measure": "OBSI", "at_most": "101 dB(A)", "speed": "60 mph"}},
        (
            "noise beside the tyre (OBSI)",
            "at most 101 dB(A)",
            "at least 98 dB(A)",
            "holds, as far as is known",
        ),
    ),
    # 48.3 of the steps and 30 of the surface
    "estimate": (
        "diamond_grinding",
        {**SITE, f"{MAIN}.joint_match": "at most 1/16 in", f"{MAIN}.smoothness": RIDE},
        ("roughness index", "at most 75 in/mi", "30 in/mi to 59.4 in/mi", "inside, as an estimate"),
    ),
    # 1.65 x 59.4 of the segment is more than the 46 of a step of 1/16 in
    "worst cause": (
        "diamond_grinding",
        {
            **SITE,
            f"{MAIN}.joint_match": "at most 1/16 in",
            f"{MAIN}.smoothness": {
                **RIDE,
                "localized": {"limit": "at most 160 in/mi", "base": "25 ft"},
            },
        },
        (
            "localized roughness",
            "at most 160 in/mi",
            "49.5 in/mi to 98 in/mi",
            "inside, as an estimate",
        ),
    ),
    # 1 - 0.75 / 24
    "proof": (
        "longitudinal_grooving",
        {
            f"{MAIN}.groove.spacing": "3/4 in",
            f"{MAIN}.coverage": {"share": "at least 95 percent", "window_width": "2 ft"},
            f"{MAIN}.blade": {"failed_allowed": "at most 1"},
        },
        (
            "share of the area textured",
            "at least 95 percent",
            "96.9 percent to 100 percent",
            "assured, margin 1.9 percent",
        ),
    ),
    # 1/8 + 1/2 is not 3/4
    "clash": (
        "longitudinal_grooving",
        {
            f"{MAIN}.groove": {"width": "1/8 in", "depth": "1/8 in", "spacing": "3/4 in"},
            f"{MAIN}.land": {"width": "1/2 in"},
        },
        ("land width", "1/2 in", "5/8 in", "impossible"),
    ),
}


@pytest.mark.parametrize("name", ROWS)
def test_a_row_says_what_is_required_allowed_and_found(name: str) -> None:
    base, patches, expected = ROWS[name]
    (area,) = reconcile(job(base, patches)).areas

    assert expected in rows_of(area)


def test_a_result_beside_a_clash_is_not_called_undecided() -> None:
    patches = {
        f"{MAIN}.groove": {"width": "1/8 in", "depth": "1/8 in", "spacing": "3/4 in"},
        f"{MAIN}.land": {"width": "1/2 in"},
        f"{MAIN}.texture_depth": {"measure": "MTD", "at_least": "0.4 mm", "method": "ASTM E965"},
    }
    (area,) = reconcile(job("longitudinal_grooving", patches)).areas
    (depth,) = [row for row in rows_of(area) if row[0] == "texture depth"]

    assert depth[3] == "not judged beside the clash"
