"""A contract on two pavements: every room looks at each area with the facts that hold there."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest

from specwriter.compare import compare
from specwriter.workflow import check, draft
from specwriter.worksheet import work_out
from tests.support import job, patched, text_of


def _checked(patches: dict[str, Any], folder: Path) -> Any:
    path = folder / "job.yaml"
    path.write_text(patched(text_of("five-textures"), patches), encoding="utf-8")
    result = check(path)
    assert result.source.faults == ()
    return result


def _slugs(result: Any) -> dict[str, str | None]:
    return {finding.slug: finding.area for finding in result.findings}


def test_a_deck_is_held_to_its_own_cover(tmp_path: Path) -> None:
    thin = {"areas.deck.conditions.cover_to_steel": "2-1/4 in"}
    (finding,) = _checked(thin, tmp_path).findings
    assert finding.area == "deck"
    assert "areas.deck.conditions.cover_to_steel" in {each.path for each in finding.evidence}


@pytest.mark.parametrize(
    ("kind", "found"), [("asphalt", True), ("jointed_reinforced_concrete", False)]
)
def test_a_rule_on_the_pavement_looks_at_the_area_that_lies_on_it(
    kind: str, found: bool, tmp_path: Path
) -> None:
    slugs = _slugs(_checked({"areas.loop.conditions.pavement": kind}, tmp_path))
    assert slugs.get("concrete-texture-on-asphalt") == ("loop" if found else None)


def test_an_asphalt_area_is_not_told_of_the_joints_of_the_contract(tmp_path: Path) -> None:
    asphalt = {"areas.ramp.conditions.pavement": "asphalt"}
    assert "joints-on-jointless-pavement" not in _slugs(_checked(asphalt, tmp_path))
    jointed = {**asphalt, "areas.ramp.conditions.joint_spacing": "15 ft"}
    assert "joints-on-jointless-pavement" in _slugs(_checked(jointed, tmp_path))


def test_the_worksheet_takes_the_facts_of_each_area() -> None:
    built = job("five-textures")
    left = {
        line.area: {each.path for each in line.inputs}
        for line in work_out(built).figures
        if line.title.startswith("cover to steel left")
    }
    assert "conditions.cover_to_steel" in left["expressway"]
    assert "areas.deck.conditions.cover_to_steel" in left["deck"]


def test_the_document_states_the_facts_of_each_area_apart(tmp_path: Path) -> None:
    asphalt = {
        "areas.ramp.conditions.pavement": "asphalt",
        "areas.ramp.conditions.asphalt_thickness": "6 in",
    }
    page = draft(_checked(asphalt, tmp_path), ("md",)).contents["md"].decode()
    said = page.partition("Information on the existing pavement")[2].partition("###")[0]
    stated = {
        block.partition(":")[0].strip(): block
        for block in said.split("The Agency states the following for the surface of ")[1:]
    }
    assert list(stated) == [
        "Terminal Loop travel lanes and Airport Expressway travel lanes",
        "Exit 2 ramp",
        "Tern Creek bridge deck",
        "Runway 08-26",
    ]
    assert "asphalt" in stated["Exit 2 ramp"]
    assert "11 in" not in stated["Exit 2 ramp"]
    assert "Cutting asphalt" in page


def test_a_fact_of_an_area_is_compared_as_a_fact(tmp_path: Path) -> None:
    old = job("five-textures")
    new = job("five-textures", {"areas.deck.conditions.cover_to_steel": "2-3/4 in"})
    (change,) = compare(old, new).changes
    assert (change.area, change.label) == ("deck", "cover to steel")


def test_a_key_that_holds_for_the_whole_contract_is_refused_below_an_area(tmp_path: Path) -> None:
    path = tmp_path / "job.yaml"
    text = patched(text_of("five-textures"), {"areas.deck.conditions.night_work": True})
    path.write_text(text, encoding="utf-8")
    (fault,) = check(path).source.faults
    assert "night_work" in fault.says
