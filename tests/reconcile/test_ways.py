"""What a finding offers to do about it: only what ends it, and all that does.

Each case was worked out by hand beside it.
"""

from __future__ import annotations

from typing import Any, NamedTuple

import pytest

from specwriter.reconcile import findings_of, reconcile
from tests.support import job

DEPTH = {"measure": "MTD", "method": "ASTM E965"}


class Case(NamedTuple):
    base: str
    patches: dict[str, Any]
    slug: str
    offered: tuple[str, ...]
    not_offered: tuple[str, ...] = ()


CASES = {
    # The existing roughness stands on both sides: 0.45 E is left of 0.95 x 0.517 E at any E.
    "a value that cancels": Case(
        "diamond_grinding",
        {
            "conditions.existing_mri": "150 in/mi",
            "conditions.existing_wavelength": "40 ft to 50 ft",
            "areas.mainline.equipment": {"wheelbase": "12 ft"},
            "areas.mainline.smoothness": {"index": "MRI", "improvement": "at least 55 percent"},
        },
        "improvement-left-by-the-wheelbase",
        ("wheelbase at least", "wavelength of the existing roughness at most"),
        ("existing MRI",),
    ),
    # The groove is 0.794 mm deep: no width and no land of it gives 0.8 mm as written.
    "only the rounding of the others leaves room": Case(
        "diamond_grinding",
        {
            "areas.mainline.groove": {"width": "0.125 in"},
            "areas.mainline.ridge": {"height": "1/32 in"},
            "areas.mainline.texture_depth": DEPTH
            | {"at_least": "0.8 mm", "land_texture": "0.2 mm"},
        },
        "texture-depth-out-of-reach",
        ("ridge height at least", "texture of the land at least"),
        ("groove width", "land width"),
    ),
    # 0.125 x d / 0.225 = 1.0 mm at d = 1.8 mm = 0.071 in, whatever the profile depth is to be.
    "two results that hang together": Case(
        "diamond_grinding",
        {
            "areas.mainline.texture_depth": DEPTH | {"at_least": "1.0 mm"},
            "areas.mainline.also_stated": [
                {
                    "in": "Drawing 9",
                    "texture_depth": {
                        "measure": "MPD",
                        "at_least": "0.6 mm",
                        "method": "ASTM E1845",
                        "edition": "2015",
                        "direction": "across_lane",
                    },
                }
            ],
        },
        "texture-depth-not-assured",
        ("groove depth at least 0.071 in", "state the texture of the land"),
    ),
    # The metric column ends at 8 mm = 0.315 in.
    "what another document states of the same groove": Case(
        "runway_grooving",
        {
            "areas.runway.groove": {
                "width": "6 mm +2 mm -0 mm",
                "depth": "6 mm ± 2 mm",
                "spacing": "38 mm +0 mm -3 mm",
            },
            "areas.runway.texture_depth": DEPTH | {"at_least": "1.0 mm", "land_texture": "0 mm"},
            "areas.runway.also_stated": [
                {
                    "in": "inch column",
                    "groove": {
                        "width": "1/4 in +1/16 in -0 in",
                        "depth": "1/4 in ± 1/16 in",
                        "spacing": "1-1/2 in +0 in -1/8 in",
                    },
                }
            ],
        },
        "texture-depth-not-assured",
        ("groove width (inch column) 0.314 in to 0.315 in",),
    ),
    # The narrowest groove adds 1/8 in x (3/16 in - 0.3 mm): with s at most 14.17 / 0.5 = 28.3 mm it
    # adds half a millimetre. The witness shown is not one with a spacing of a mile.
    "a spacing without an end": Case(
        "longitudinal_grooving",
        {
            "areas.mainline.groove": {
                "width": "at least 1/8 in",
                "depth": "3/16 in",
                "spacing": "at least 3/4 in",
            },
            "areas.mainline.texture_depth": DEPTH
            | {"at_least": "0.8 mm", "land_texture": "0.3 mm"},
        },
        "texture-depth-not-assured",
        ("groove spacing 3/4 in to 1.115 in", "texture of the land at least 0.8 mm"),
    ),
    # The segment is in the groove and the land is what the spacer leaves beside it: the groove is
    # 0.125 in: (0.125 x 1.5875 + 0.09 x 0.1) / 0.215 = 0.965 mm, less 0.4 mm of wear. A groove a
    # tenth wider than its segment would leave 0.651 mm, and is ruled out by the same blades.
    "no further than the other relations let it go": Case(
        "diamond_grinding",
        {
            "areas.mainline.groove": {"depth": "1/16 in"},
            "areas.mainline.land": None,
            "areas.mainline.blade": {
                "segment": "0.125 in",
                "core": "0.105 in",
                "spacer": "0.110 in",
            },
            "areas.mainline.texture_depth": DEPTH
            | {"end_of_life_at_least": "0.70 mm", "land_texture": "0.10 mm"},
        },
        "texture-depth-at-end-of-life",
        ("texture depth at end of life at least 0.564 mm",),
    ),
    # The least that the scatter leaves, 66.4, would fail again when choices are judged, at 78.6.
    "as far as the nominal asks": Case(
        "diamond_grinding",
        {
            "conditions.pavement": "jointed_plain_concrete",
            "conditions.joint_spacing": "15 ft",
            "conditions.daily_curl": "0.09 in",
            "areas.mainline.smoothness": {"index": "HRI", "limit": "at most 60 in/mi"},
        },
        "roughness-of-the-parts",
        ("half-car index at most 78.6 in/mi",),
        ("66.4",),
    ),
}


@pytest.mark.parametrize("case", [pytest.param(case, id=name) for name, case in CASES.items()])
def test_what_is_offered_ends_the_finding(case: Case) -> None:
    found = {each.slug: each for each in findings_of(reconcile(job(case.base, case.patches)))}
    ways = found[case.slug].settle

    for words in case.offered:
        assert any(each.startswith(words) for each in ways), ways
    for words in case.not_offered:
        assert not any(words in each for each in ways), ways


def test_a_witness_is_one_that_can_be_pictured() -> None:
    case = CASES["a spacing without an end"]

    (verdict,) = reconcile(job(case.base, case.patches)).verdicts

    assert verdict.result is not None
    assert dict(verdict.result.witness)["groove.spacing"] < 1


def test_a_step_names_only_the_relation_that_gives_it() -> None:
    # 10 per ft are 1.2 in; what the share allows of the spacing plays no part.
    patches = {
        "areas.mainline.groove": {"width": "1/8 in", "depth": "1/8 in", "per_foot": "10.0 per ft"},
        "areas.mainline.blade": {"failed_allowed": "2 to 3"},
        "areas.mainline.coverage": {
            "share": "at least 95.0 percent",
            "window_width": "36.0 in",
            "window_length": "100 ft",
        },
    }

    (finding,) = findings_of(reconcile(job("transverse_grooving", patches)))

    assert "groove spacing 1.2 in (grooves per foot = 12 in / spacing)." in finding.says
