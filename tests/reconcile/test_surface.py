"""Wet weather, friction and wear: what is cautioned, what is silent, what stands aside.

None of these relations is a proof: each rests on a model or on experience, so the most that it
may say is a caution.
"""

from __future__ import annotations

from typing import Any

import pytest

from specwriter.diagnostic import Finding, Grade
from specwriter.reconcile import findings_of, reconcile
from specwriter.reconcile.registry import all_relations
from tests.support import job

AREA = "areas.mainline"


def found(base: str, patches: dict[str, Any]) -> tuple[Finding, ...]:
    return tuple(findings_of(reconcile(job(base, patches))))


def limit(number: str, tyre: str, speed: str = "40 mph") -> dict[str, Any]:
    return {"measure": "SN", "at_least": number, "tyre": tyre, "speed": speed}


def named(measure: str, number: str) -> dict[str, Any]:
    return {"measure": measure, "at_least": number}


def friction(
    first: dict[str, Any], second: dict[str, Any], mpd: str | None = "0.8 mm"
) -> dict[str, Any]:
    depth = {"measure": "MPD", "at_least": mpd} if mpd else None
    return {
        f"{AREA}.friction": first,
        f"{AREA}.also_stated": [{"in": "sheet 4", "friction": second}],
        f"{AREA}.texture_depth": depth,
    }


def depth(**more: str) -> dict[str, Any]:
    return {f"{AREA}.texture_depth": {"measure": "MTD", "method": "ASTM E965", **more}}


def wet(speed: str, texture: str = "0.8 mm", **more: str) -> dict[str, Any]:
    site = {"rainfall": "50 mm/h", "drainage_path": "7.3 m", "cross_slope": "2 percent", **more}
    return {"conditions": {"posted_speed": speed, **site}, **depth(at_least=texture)}


RIBBED, SMOOTH = "ribbed", "smooth"
PAIR, ABOVE, SPEEDS = "ribbed-and-smooth-friction", "smooth-above-ribbed", "friction-at-two-speeds"
GONE = "texture-depth-at-end-of-life"
WORN = "end-of-life-texture-not-assured"
WET = "posted-speed-above-onset-speed"

CASES: list[tuple[str, dict[str, Any], list[str]]] = [
    # At a profile depth of 0.8 mm the ribbed tyre's 45 goes with the smooth tyre's 31, within 8.
    ("diamond_grinding", friction(limit("45", RIBBED), limit("31", SMOOTH)), []),
    ("diamond_grinding", friction(limit("45", RIBBED), limit("38", SMOOTH)), []),
    ("diamond_grinding", friction(limit("45", RIBBED), limit("40", SMOOTH)), [PAIR]),
    ("diamond_grinding", friction(limit("45", RIBBED), limit("22", SMOOTH)), [PAIR]),
    ("diamond_grinding", friction(limit("at least 45", RIBBED), limit("40", SMOOTH)), [PAIR]),
    ("diamond_grinding", friction(limit("40", SMOOTH), limit("45", RIBBED)), [PAIR]),
    ("diamond_grinding", friction(named("SN40R", "45"), named("SN40S", "40")), [PAIR]),
    ("diamond_grinding", friction(named("SN40R", "45"), named("SN50S", "40")), []),
    # Without a profile depth only the order of the tyres can be judged.
    ("diamond_grinding", friction(limit("45", RIBBED), limit("22", SMOOTH), None), []),
    ("diamond_grinding", friction(limit("30", RIBBED), limit("35", SMOOTH), None), []),
    ("diamond_grinding", friction(limit("30", RIBBED), limit("36", SMOOTH), None), [ABOVE]),
    # 40 at 40 mph: 27.5 by the friction index, 34.2 by the exponential form at 60 mph.
    ("diamond_grinding", friction(limit("40", RIBBED), limit("34", RIBBED, "60 mph")), []),
    ("diamond_grinding", friction(limit("40", RIBBED), limit("26", RIBBED, "60 mph")), []),
    ("diamond_grinding", friction(limit("40", RIBBED), limit("39", RIBBED, "60 mph")), [SPEEDS]),
    ("diamond_grinding", friction(limit("40", RIBBED), limit("22", RIBBED, "60 mph")), [SPEEDS]),
    ("diamond_grinding", friction(limit("40", RIBBED), limit("39", RIBBED, "65 km/h")), []),
    ("diamond_grinding", friction(limit("40", RIBBED), limit("39", SMOOTH, "60 mph")), []),
    # Loss 0.4 to 0.5 mm on ground, 0.05 to 0.08 mm on grooved surfaces.
    ("diamond_grinding", depth(at_least="1.0 mm", end_of_life_at_least="0.5 mm"), []),
    ("diamond_grinding", depth(at_least="0.9 mm", end_of_life_at_least="0.5 mm"), [WORN]),
    ("diamond_grinding", depth(at_least="0.8 mm", end_of_life_at_least="0.5 mm"), [GONE]),
    ("runway_grooving", depth(at_least="0.5 mm", end_of_life_at_least="0.5 mm"), []),
    # A film of 0.97 mm: onset at 52 mph.
    ("transverse_grooving", wet("50 mph"), []),
    ("transverse_grooving", wet("55 mph"), [WET]),
    ("transverse_grooving", wet("55 mph", rainfall="at most 5 mm/h"), []),
    ("transverse_grooving", wet("55 mph", drainage_path="20 m"), []),
    ("transverse_grooving", wet("55 mph", "0.4 mm", grade="1 percent"), [WET]),
    # Along the road the land alone counts.
    ("longitudinal_grooving", wet("65 mph"), []),
    ("longitudinal_grooving", wet("65 mph") | depth(land_texture="0.3 mm"), [WET]),
    ("longitudinal_grooving", wet("65 mph") | depth(land_texture="0.05 mm"), []),
    ("longitudinal_grooving", wet("65 mph") | {f"{AREA}.texture_depth": None}, []),
]


@pytest.mark.parametrize(("base", "patches", "expected"), CASES)
def test_what_models_and_experience_say_is_a_caution(
    base: str, patches: dict[str, Any], expected: list[str]
) -> None:
    if base == "runway_grooving":
        patches = {key.replace("mainline", "runway"): value for key, value in patches.items()}
    out = ("texture-depth-not-assured", "texture-depth-out-of-reach")
    findings = [each for each in found(base, patches) if each.slug not in out]

    assert [each.slug for each in findings] == expected
    assert all(each.grade is Grade.CAUTION for each in findings)
    assert all(each.sources and each.settle for each in findings)


def test_no_relation_of_these_topics_can_prove() -> None:
    topics = {PAIR, ABOVE, SPEEDS, WET, GONE}
    ours = [each for each in all_relations() if each.slug in topics]

    assert {each.slug for each in ours} == topics
    assert all(each.kind != "exact" for each in ours)
    assert all("memory" in each.source for each in ours if each.slug in (PAIR, ABOVE))


def test_the_caution_on_water_names_the_tyre_and_that_it_proves_nothing() -> None:
    (finding,) = (each for each in found("transverse_grooving", wet("65 mph")) if each.slug == WET)

    assert "is expected to be" in finding.says
    assert "24 psi" in finding.says
    assert "never a proof of safety" in finding.says
    assert "conditions.posted_speed" in [each.path for each in finding.evidence]
    assert not any("speed" in way for way in finding.settle)


def test_a_site_outside_the_formula_is_said_to_be_so() -> None:
    made = reconcile(job("transverse_grooving", wet("65 mph", drainage_path="20 m")))

    assert "the film of water is outside its formula: path" in [
        each.because for each in made.not_run
    ]


@pytest.mark.parametrize(("measure", "number"), [("BPN", "45"), ("MU", "0.5")])
def test_other_friction_scales_are_not_compared(measure: str, number: str) -> None:
    second = limit(number, SMOOTH) | {"measure": measure}

    assert found("diamond_grinding", friction(limit("45", RIBBED), second)) == ()


def test_profile_depth_and_patch_depth_of_two_documents_are_held_together() -> None:
    profile = {"measure": "MPD", "at_most": "0.8 mm", "method": "ISO 13473-1", "edition": "2019"}
    patches = depth(at_least="1.2 mm") | {
        f"{AREA}.also_stated": [{"in": "sheet 4", "texture_depth": profile}]
    }

    # 1.1 x 0.8 mm = 0.88 mm
    assert "profile-depth-by-edition-of-2019" in [
        each.slug for each in found("longitudinal_grooving", patches)
    ]
