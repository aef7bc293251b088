"""Outside its validity a relation stands aside and says so; just inside it looks.

The ranges are those that the relations state; each pair of values lies on either side of an end.
"""

from __future__ import annotations

from copy import deepcopy
from pathlib import Path
from typing import Any

import pytest

from specwriter.reconcile import findings_of, reconcile
from specwriter.report.check_html import check_html
from specwriter.report.check_text import check_text
from specwriter.workflow import check
from tests.support import job, patched, text_of

AREA = "areas.mainline"
STEPS = {
    "conditions": {"pavement": "jointed_plain_concrete", "joint_spacing": "15 ft"},
    f"{AREA}.joint_match": "at most 1/4 in",
    f"{AREA}.smoothness": {
        "index": "MRI",
        "limit": "at most 60 in/mi",
        "localized": {"limit": "at most 100 in/mi", "base": "25 ft"},
    },
}
WAVES = {
    "conditions": {"existing_mri": "100 in/mi", "existing_wavelength": "60 ft"},
    f"{AREA}.equipment": {"wheelbase": "12 ft"},
    f"{AREA}.smoothness": {"index": "MRI", "limit": "at most 60 in/mi"},
}


def two_indexes(mri: str, band: str, profile: str) -> dict[str, Any]:
    index = {"index": "PI", "limit": profile, "blanking_band": band}
    return {
        f"{AREA}.smoothness": {"index": "MRI", "limit": mri},
        f"{AREA}.also_stated": [{"in": "sheet 4", "smoothness": index}],
    }


def noise(speed: str) -> dict[str, Any]:
    return {f"{AREA}.noise": {"measure": "OBSI", "at_most": "95 dB(A)", "speed": speed}}


def edge(length: str, kind: str = "resting") -> dict[str, Any]:
    return {
        f"{AREA}.smoothness": {"index": "MRI", "limit": "at most 100 in/mi"},
        f"{AREA}.straightedge": {"length": length, "tolerance": "at most 1/16 in", "kind": kind},
    }


WORN = {"measure": "MTD", "at_least": "0.5 mm", "end_of_life_at_least": "0.5 mm"}
CASES = [
    # slug, base, the job, what takes it outside, words of the reason
    ("roughness-of-the-parts", STEPS, {"conditions.joint_spacing": "8 ft"}, "10 ft to 40 ft"),
    ("roughness-of-the-parts", STEPS, {"conditions.joint_spacing": "45 ft"}, "10 ft to 40 ft"),
    ("localized-of-a-step", STEPS, {"conditions.joint_spacing": "8 ft"}, "10 ft to 40 ft"),
    (
        "wave-left-by-the-wheelbase",
        WAVES,
        {"conditions.existing_wavelength": "250 ft"},
        "8 ft to 200 ft",
    ),
    ("wave-left-by-the-wheelbase", WAVES, {f"{AREA}.equipment.wheelbase": "6 ft"}, "8 ft to 40 ft"),
    (
        "profile-index-and-roughness",
        two_indexes("at most 150 in/mi", "0.0 in", "at most 20 in/mi"),
        {f"{AREA}.smoothness.limit": "at most 170 in/mi"},
        "40 to 160 in/mi",
    ),
    (
        "profile-index-and-roughness",
        two_indexes("at most 45 in/mi", "0.0 in", "at most 55 in/mi"),
        {f"{AREA}.also_stated.0.smoothness.limit": "at most 65 in/mi"},
        "40 to 160 in/mi",
    ),
    ("noise-below-the-quiet-end", noise("35 mph"), noise("30 mph"), "35 to 70 mph"),
    ("noise-below-the-quiet-end", noise("70 mph"), noise("75 mph"), "35 to 70 mph"),
    ("straightedge-on-the-surface", edge("10 ft"), edge("16 ft"), "10 ft"),
    ("straightedge-on-the-surface", edge("10 ft"), edge("10 ft", "rolling"), "resting"),
    (
        "texture-depth-at-end-of-life",
        {f"{AREA}.texture_depth": WORN},
        {f"{AREA}.texture": "transverse_grooving"},
        "transverse grooving",
    ),
]


@pytest.mark.parametrize(("slug", "inside", "outside", "words"), CASES)
def test_outside_its_validity_a_relation_says_so_and_finds_nothing(
    slug: str, inside: dict[str, Any], outside: dict[str, Any], words: str
) -> None:
    looks = reconcile(job("diamond_grinding", deepcopy(inside)))
    aside = reconcile(job("diamond_grinding", deepcopy(inside | outside)))
    told = {each.slug: each.because for each in aside.not_run if each.aside}

    assert slug in looks.ran
    assert slug not in [each.slug for each in looks.not_run]
    assert words in told[slug]
    assert slug not in [each.slug for each in findings_of(aside)]


@pytest.mark.parametrize("form", ["text", "html"])
def test_the_report_tells_what_lies_outside_apart_from_what_is_missing(
    form: str, tmp_path: Path
) -> None:
    path = tmp_path / "job.yaml"
    path.write_text(patched(text_of("diamond_grinding"), noise("30 mph")), "utf-8")
    result = check(path)
    page = check_text(result) if form == "text" else check_html([result])
    head, _, rest = page.partition("utside what is known")

    assert "levels of a texture" not in head
    assert "levels of a texture are carried" in " ".join(rest.split())


def test_rain_without_the_path_of_the_water_is_said_to_wait() -> None:
    site = {"posted_speed": "65 mph", "rainfall": "at most 50 mm/h", "cross_slope": "2 percent"}
    made = reconcile(job("transverse_grooving", {"conditions": site}))

    assert "path of the water and texture that holds water are not given" in [
        each.because for each in made.not_run if not each.aside
    ]


def test_two_friction_limits_wait_for_the_texture_of_the_surface() -> None:
    limits = [{"measure": "SN40R", "at_least": "45"}, {"measure": "SN40S", "at_least": "22"}]
    patches = {
        f"{AREA}.friction": limits[0],
        f"{AREA}.also_stated": [{"in": "sheet 4", "friction": limits[1]}],
    }
    made = reconcile(job("diamond_grinding", patches))

    assert any("profile depth (MPD)" in each.because for each in made.not_run if not each.aside)
