"""Clashes of dimensions: found when proved, smallest, and with the way out in numbers."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest

from specwriter.model import Job
from specwriter.reconcile import findings_of, reconcile
from specwriter.reconcile.explain import findings_from
from specwriter.reconcile.registry import all_relations
from specwriter.reconcile.requirement import read
from specwriter.reconcile.solve import is_refuted, solve
from tests.support import job
from tests.support.relations import relations_for


def grooved(**values: Any) -> Job:
    return job(
        "longitudinal_grooving",
        {"areas.mainline.groove": {}, "areas.mainline.land": {}}
        | {f"areas.mainline.{key.replace('__', '.')}": value for key, value in values.items()},
    )


SILENT: list[dict[str, str]] = [
    {"groove__width": "1/8 in", "land__width": "5/8 in", "groove__spacing": "3/4 in"},
    {"groove__width": "3.2 mm", "land__width": "15.9 mm", "groove__spacing": "19 mm"},
    {"groove__width": "2.4 mm", "land__width": "16.6 mm", "groove__spacing": "19.1 mm"},
    {"groove__width": "1/8 in", "land__width": "5/8 in", "groove__spacing": "19 mm"},
    {"groove__spacing": "3/4 in", "groove__per_foot": "16 per ft"},
    {"groove__spacing": "19 mm", "groove__per_metre": "52.6 per m"},
    {"groove__per_foot": "57 per ft", "groove__per_metre": "187 per m"},
    {"groove__width": "1/8 in", "groove__clear_gap": "5/8 in", "groove__spacing": "3/4 in"},
    {"groove__width": "0.090 in to 0.130 in", "land__width": "0.060 in to 0.130 in"},
    {"groove__width": "at least 1/8 in", "land__width": "1/2 in", "groove__spacing": "3/4 in"},
]
CLASHING: list[tuple[dict[str, str], str, list[str]]] = [
    (
        {"groove__width": "1/8 in", "land__width": "1/2 in", "groove__spacing": "3/4 in"},
        "groove-land-spacing",
        ["groove spacing 5/8 in", "groove width 1/4 in", "land width 5/8 in"],
    ),
    (
        {"groove__spacing": "3/4 in", "groove__per_foot": "18 per ft"},
        "grooves-per-foot",
        ["groove spacing 0.667 in", "grooves per foot 16 per ft"],
    ),
    (
        {"groove__width": "at most 1/8 in", "land__width": "1/2 in", "groove__spacing": "3/4 in"},
        "groove-land-spacing",
        ["groove spacing 1/2 in to 5/8 in", "groove width 1/4 in", "land width 5/8 in to 3/4 in"],
    ),
]


@pytest.mark.parametrize("values", SILENT, ids=str)
def test_values_that_agree_raise_nothing(values: dict[str, str]) -> None:
    assert findings_of(reconcile(grooved(**values))) == ()


@pytest.mark.parametrize(("values", "slug", "ways"), CLASHING, ids=lambda each: str(each)[:60])
def test_values_that_clash_are_one_finding_with_its_ways_out(
    values: dict[str, str], slug: str, ways: list[str]
) -> None:
    (finding,) = findings_of(reconcile(grooved(**values)))

    assert finding.slug == slug
    assert sorted(finding.settle) == sorted(ways)


def test_every_way_out_really_settles_the_clash() -> None:
    clashing = {"groove__width": "1/8 in", "land__width": "1/2 in", "groove__spacing": "3/4 in"}
    for key, value in (
        ("groove__spacing", "5/8 in"),
        ("groove__width", "1/4 in"),
        ("land__width", "5/8 in"),
    ):
        assert findings_of(reconcile(grooved(**clashing | {key: value}))) == ()


def test_two_separate_clashes_in_one_area_are_both_found() -> None:
    found = findings_of(reconcile(job("as-received")))

    assert sorted((each.area, each.slug) for each in found) == [
        ("curve", "groove-land-spacing"),
        ("ring_road", "dimensions-cannot-hold-together"),
        ("ring_road", "land-of-the-blades"),
    ]


def test_a_clash_has_no_member_to_spare() -> None:
    built = job("as-received")
    relations = relations_for(built, built.areas["ring_road"])
    for verdict in reconcile(built).verdicts:
        if verdict.clash is None or verdict.area != "ring_road":
            continue
        members = verdict.clash.members
        assert is_refuted(members, relations)
        for each in members:
            rest = [one for one in members if one is not each]
            assert solve(rest, relations).solution is not None


def test_a_solution_satisfies_every_requirement_as_written() -> None:
    built = job("urban-grinding")
    area = built.areas["mainline"]
    requirements = read(built, area)

    answer = solve(requirements, relations_for(built, area), exact=True)

    assert answer.solution is not None
    for each in requirements:
        assert answer.solution[each.variable] in each.interval


def test_relations_are_complete_and_named_after_their_files() -> None:
    relations = all_relations()

    assert len(
        {(each.slug, each.title, each.shape.variables, each.applies) for each in relations}
    ) == len(relations)
    assert len({each.slug for each in relations}) >= 18
    for each in relations:
        assert each.title
        assert each.statement
        assert each.source
        assert each.validity


def test_one_blade_thickness_is_read_as_both_and_the_report_says_so() -> None:
    patches: dict[str, Any] = {
        "areas.mainline.groove.width": None,
        "areas.mainline.land.width": None,
        "areas.mainline.groove.per_foot": "55 per ft",
        "areas.mainline.blade": {"segment": "0.125 in", "spacer": "0.110 in"},
    }

    (finding,) = findings_of(reconcile(job("diamond_grinding", patches)))

    assert "read as both core and segment" in finding.says
    assert (
        findings_of(
            reconcile(
                job("diamond_grinding", patches | {"areas.mainline.groove.per_foot": "51 per ft"})
            )
        )
        == ()
    )


def test_a_trapezoid_of_any_width_is_seen_to_be_too_shallow() -> None:
    # As wide at the bottom as the land: (w + 3.97) / 2 x 6.35 / (w + 3.97) = 3.175 mm at any width,
    # and lands of 0.45 mm on half of the surface at most add 0.23 mm: 3.40 mm, not 3.49 mm.
    # So the spacing and both counts of grooves are not needed.
    values = {
        "groove__per_foot": "38 to 40 per ft",
        "groove__per_metre": "124 to 128 per m",
        "groove__spacing": "7.540625 mm",
        "groove__width_at_bottom": "3.968750 mm",
        "groove__depth": "6.350000 mm",
        "land__width": "3.968750 mm",
    }
    depth = {"measure": "MTD", "at_least": "3.49 mm", "land_texture": "at most 0.4 mm"}
    built = grooved(**values, texture_depth=depth)

    clashes = [each.clash for each in reconcile(built).verdicts if each.clash]

    assert {
        *("groove.width_at_bottom", "groove.depth", "land.width"),
        *("texture_depth.land_texture", "texture_depth"),
    } in [{each.variable for each in clash.members} for clash in clashes]


def test_a_set_that_may_not_be_the_smallest_is_not_called_so() -> None:
    clashing = {"groove__width": "1/8 in", "land__width": "1/2 in", "groove__spacing": "3/4 in"}
    (verdict,) = reconcile(grooved(**clashing)).verdicts
    assert verdict.clash is not None
    assert verdict.clash.is_smallest
    unsure = replace(verdict, clash=replace(verdict.clash, is_smallest=False))

    assert "was not decided" not in findings_from([verdict])[0].says
    assert "was not decided" in findings_from([unsure])[0].says
