"""A required texture depth against the dimensions: out of reach, not assured, assured."""

from __future__ import annotations

from fractions import Fraction
from typing import Any

import pytest

from specwriter.diagnostic import Grade
from specwriter.model import Job
from specwriter.reconcile import findings_of, reconcile
from specwriter.reconcile.requirement import read
from specwriter.reconcile.verdict import ResultCheck
from specwriter.trade.texture_depth import texture_depth
from tests.support import job

MM = Fraction(1, 1000)
PATCH = {"measure": "MTD", "method": "ASTM E965", "edition": "2015"}


def grooved(depth: str, target: dict[str, Any], **more: Any) -> Job:
    return job(
        "longitudinal_grooving",
        {
            "areas.mainline.groove": {"width": "1/8 in", "depth": depth, "spacing": "3/4 in"},
            "areas.mainline.land": None,
            "areas.mainline.texture_depth": PATCH | target,
        }
        | more,
    )


def outcome(made: Job) -> str:
    (verdict,) = reconcile(made).verdicts
    return verdict.outcome


CASES: list[tuple[str, dict[str, Any], str]] = [
    # 1/8 in x 3/16 in at 3/4 in gives 0.794 mm in the grooves alone (geometry)
    ("3/16 in", {"at_least": "0.7 mm"}, "assured"),
    ("3/16 in", {"at_least": "0.79 mm"}, "assured"),
    ("3/16 in", {"at_least": "0.80 mm"}, "not assured"),
    ("1/8 in to 1/4 in", {"at_least": "0.8 mm"}, "not assured"),
    ("3/16 in", {"at_least": "1.0 mm", "land_texture": "0.3 mm"}, "assured"),
    ("3/16 in", {"at_least": "1.2 mm", "land_texture": "0.2 mm to 0.3 mm"}, "impossible"),
    ("1/8 in to 1/4 in", {"at_least": "1.0 mm", "land_texture": "0.3 mm"}, "not assured"),
]


@pytest.mark.parametrize(("depth", "target", "expected"), CASES)
def test_the_outcome_follows_the_geometry(
    depth: str, target: dict[str, Any], expected: str
) -> None:
    assert outcome(grooved(depth, target)) == expected


def checked(made: Job) -> ResultCheck:
    (verdict,) = reconcile(made).verdicts
    assert verdict.result is not None
    return verdict.result


def test_the_witness_obeys_every_dimension_and_fails_the_result() -> None:
    made = grooved("1/8 in to 1/4 in", {"at_least": "0.8 mm", "land_texture": "0.1 mm to 0.3 mm"})
    point = dict(checked(made).witness)

    for each in read(made, made.areas["mainline"]):
        if each.role == "result" or each.variable not in point:
            continue
        assert point[each.variable] in each.interval
    width, depth, spacing = (point[f"groove.{key}"] for key in ("width", "depth", "spacing"))
    land = point["texture_depth.land_texture"]
    assert texture_depth(width, width, depth, spacing, land) < Fraction("0.8") * MM


def test_each_tightening_alone_assures_the_result_and_half_of_it_does_not() -> None:
    target = {"at_least": "0.8 mm", "land_texture": "0.2 mm"}
    made = grooved("1/8 in to 1/4 in", target)
    (tightening,) = [
        each for each in checked(made).tightenings if each.member.variable == "groove.depth"
    ]
    assert tightening.to.low is not None
    least = tightening.to.low / MM
    half = (least + Fraction("3.175")) / 2

    assert outcome(grooved(f"{float(least) + 0.001:.3f} mm to 6.350 mm", target)) == "assured"
    assert outcome(grooved(f"{float(half):.3f} mm to 6.350 mm", target)) == "not assured"


def test_a_tightening_may_lie_outside_what_is_written() -> None:
    # 21 per ft repeat every 14.514 mm; beside lands of 34/64 in at most, 1.0205 mm of groove stay.
    # 0.62 mm x 14.514 - 13.494 x 0.1 mm = 1.0205 mm x 7.496 mm: half of that way is too little.
    target = {"at_least": "0.62 mm", "land_texture": "0.1 mm to 0.3 mm"}

    def made(depth: str) -> Job:
        more = {
            "areas.mainline.groove": {
                "width": "2/64 in to 5/64 in", "depth": depth, "per_foot": "21 per ft",
            },
            "areas.mainline.land": {"width": "at most 34/64 in"},
        }  # fmt: skip
        return grooved(depth, target, **more)

    deeper = next(
        each.to
        for each in checked(made("10/64 in to 11/64 in")).tightenings
        if each.member.variable == "groove.depth"
    )

    assert deeper.low is not None
    assert float(deeper.low / MM) == pytest.approx(7.496, abs=0.001)
    assert outcome(made("at least 7.497 mm")) == "assured"
    assert outcome(made("at least 5.73 mm")) == "not assured"


def test_land_that_is_not_stated_is_named_with_the_texture_it_would_need() -> None:
    (finding,) = findings_of(reconcile(grooved("1/16 in", {"at_least": "1.0 mm"})))

    assert finding.grade is Grade.CAUTION
    assert "which the job does not state" in finding.says


EDITIONS = [
    # grooves of 0.529 mm: (0.529 - 0.2) / 0.8 by 0.2 + 0.8 MPD, 0.529 / 1.1 by 1.1 MPD
    ("ISO 13473-1", "1997", "0.41 mm"),
    ("ASTM E1845", "2015", "0.41 mm"),
    ("ISO 13473-1", "2019", "0.48 mm"),
]


@pytest.mark.parametrize(("method", "edition", "depth"), EDITIONS)
def test_a_profile_depth_is_judged_by_its_named_edition(
    method: str, edition: str, depth: str
) -> None:
    target = {"measure": "MPD", "at_least": "0.9 mm", "method": method, "edition": edition}

    (finding,) = findings_of(reconcile(grooved("1/8 in", target)))

    assert f"it gives {depth}." in finding.says


def test_a_profile_depth_without_an_edition_is_not_judged() -> None:
    made = grooved("1/8 in", {"measure": "MPD", "at_least": "0.9 mm", "edition": None})
    found = reconcile(made)

    assert found.verdicts == ()
    assert any("edition" in each.because for each in found.not_run)


def test_depth_measured_between_the_grooves_is_not_held_against_them() -> None:
    found = reconcile(grooved("1/8 in", {"at_least": "1.0 mm", "surface": "between_grooves"}))

    assert found.verdicts == ()


def test_a_ground_surface_below_the_target_at_its_upper_bound_is_out_of_reach() -> None:
    made = job(
        "diamond_grinding",
        {"areas.mainline.texture_depth": PATCH | {"at_least": "1.5 mm", "land_texture": "0.2 mm"}},
    )

    (finding,) = findings_of(reconcile(made))

    assert finding.grade is Grade.CONFLICT
    assert "at most" in finding.says


def test_no_choice_is_a_pattern_without_a_spacing() -> None:
    # 0 / 0 is no texture depth: the ranges reach down to nothing, a choice must not.
    groove = {"width": "at most 8/64 in", "depth": "at most 5/64 in", "spacing": "at most 50/64 in"}
    target = {"at_least": "0.28 mm", "land_texture": "0.2 mm"}
    witness = dict(checked(grooved("1/8 in", target, **{"areas.mainline.groove": groove})).witness)

    assert witness["groove.spacing"] > 0
