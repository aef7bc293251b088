"""What holds at an area: its own facts over those of the contract, each with its place."""

from __future__ import annotations

from dataclasses import fields

from specwriter.model import at_area, sites_of
from specwriter.model.conditions import Conditions, PavementFacts, PlaceFacts
from tests.support import job

CONTRACT = {
    "conditions.pavement": "jointed_plain_concrete",
    "conditions.slab_thickness": "11 in",
    "conditions.joint_spacing": "15 ft",
    "conditions.posted_speed": "55 mph",
    "conditions.drainage": "closed",
}
DECK = {
    "areas.mainline.conditions.pavement": "bridge_deck_concrete",
    "areas.mainline.conditions.cover_to_steel": "2-1/2 in",
}


def _at_mainline(patches: dict[str, str]) -> Conditions:
    built = job("longitudinal_grooving", {**CONTRACT, **patches})
    return at_area(built, built.areas["mainline"]).conditions


def test_an_area_without_facts_of_its_own_sees_the_job_itself() -> None:
    built = job("longitudinal_grooving", CONTRACT)
    assert at_area(built, built.areas["mainline"]) is built


def test_own_facts_stand_before_those_of_the_contract() -> None:
    found = _at_mainline({"areas.mainline.conditions.slab_thickness": "8 in"})
    assert (str(found.slab_thickness), str(found.joint_spacing)) == ("8 in", "15 ft")
    assert found.path_to("slab_thickness") == "areas.mainline.conditions.slab_thickness"
    assert found.path_to("joint_spacing") == "conditions.joint_spacing"
    assert found.path_to("cover_to_steel") == "conditions.cover_to_steel"


def test_another_pavement_takes_no_fact_about_the_one_of_the_contract() -> None:
    found = _at_mainline(DECK)
    assert (found.slab_thickness, found.joint_spacing) == (None, None)
    assert found.path_to("slab_thickness") == "areas.mainline.conditions.slab_thickness"
    assert (str(found.posted_speed), found.drainage) == ("55 mph", "closed")


def test_the_pavement_of_the_contract_stated_again_takes_its_facts() -> None:
    found = _at_mainline({"areas.mainline.conditions.pavement": "jointed_plain_concrete"})
    assert str(found.slab_thickness) == "11 in"


def test_areas_on_equal_facts_are_one_site() -> None:
    built = job("five-textures")
    assert [list(site.areas) for site in sites_of(built)] == [
        ["loop", "expressway", "ramp"],
        ["deck"],
        ["runway"],
    ]
    assert [site.conditions.pavement for site in sites_of(built)] == [
        "jointed_plain_concrete",
        "bridge_deck_concrete",
        "airfield_concrete",
    ]


def test_facts_of_a_place_are_the_first_of_the_conditions() -> None:
    names = [each.name for each in fields(Conditions)]
    assert names[: len(fields(PlaceFacts))] == [each.name for each in fields(PlaceFacts)]
    assert {each.name for each in fields(PavementFacts)} < {
        each.name for each in fields(PlaceFacts)
    }
