"""Findings that say the same of several areas are told once; others stay apart."""

from __future__ import annotations

import json
from dataclasses import replace
from pathlib import Path

from specwriter.diagnostic import Evidence, Finding, Grade
from specwriter.report.check_json import check_json
from specwriter.report.check_text import check_text, summary
from specwriter.report.grouping import grouped
from specwriter.workflow import check
from tests.support import patched, text_of


def finding(area: str | None, says: str = "Kerbs border the area.") -> Finding:
    at = Evidence(path=f"areas.{area}.texture", label="texture", written="diamond_grinding")
    return Finding(
        slug="kerb-strip-not-stated",
        grade=Grade.OPEN,
        basis="published",
        title="no strip",
        area=area,
        evidence=(at, at),
        says=says,
    )


def test_the_same_said_of_three_areas_is_told_once() -> None:
    (told,) = grouped([finding("north"), finding("south"), finding("ramp")])

    assert told.finding.area == "north, south and ramp"
    assert told.areas == ("north", "south", "ramp")
    assert [each.path for each in told.finding.evidence] == [
        "areas.north.texture",
        "areas.south.texture",
        "areas.ramp.texture",
    ]


def test_other_words_of_one_check_are_told_with_their_areas() -> None:
    some = [finding("north", "One."), finding("south", "Two."), finding("south", "Three.")]

    (told,) = grouped(some)

    assert told.finding.says == "north: One. south: Two. Three."


def test_what_differs_in_grade_scope_or_way_out_stays_apart() -> None:
    some = [
        finding("north"),
        replace(finding("ramp"), grade=Grade.CAUTION),
        replace(finding("side"), settle=("another way",)),
        finding(None),
    ]

    assert [each.areas for each in grouped(some)] == [("north",), ("ramp",), ("side",), ()]


def test_conflicts_keep_their_own_arithmetic() -> None:
    some = [replace(finding(area, f"{area}."), grade=Grade.CONFLICT) for area in ("north", "south")]

    assert [each.areas for each in grouped(some)] == [("north",), ("south",)]


def test_pay_items_that_lack_the_same_are_told_once(tmp_path: Path) -> None:
    path = tmp_path / "job.yaml"
    rules = {f"pay_items.{item}.measured_as": None for item in ("quiet", "runway", "residue")}
    path.write_text(patched(text_of("five-textures"), rules), encoding="utf-8")

    result = check(path)

    assert summary(result).startswith("1 open")
    assert [len(each.finding.evidence) for each in result.told] == [6]
    assert [json.loads(check_json([result]))["jobs"][0]["counts"]["open"]] == [1]


def test_a_report_tells_and_counts_alike_findings_once(tmp_path: Path) -> None:
    path = tmp_path / "job.yaml"
    area = {"texture": "diamond_grinding", "place": "roadway"}
    patches = {"conditions.curbs": True, "areas.ramp": area, "areas.side": area}
    path.write_text(patched(text_of("diamond_grinding"), patches), encoding="utf-8")

    text = check_text(check(path))

    assert text.count("no strip is allowed for along the kerb") == 1
    assert "OPEN in mainline, ramp and side: no strip" in text
    assert len(check(path).at_least(Grade.NOTE)) > len(check(path).told)


def test_the_place_of_a_word_is_the_column_of_the_word(tmp_path: Path) -> None:
    path = tmp_path / "job.yaml"
    patches = {"areas.mainline.testing.texture": {"remedy": "regrind as necessary"}}
    path.write_text(patched(text_of("diamond_grinding"), patches), encoding="utf-8")

    (word,) = (each for each in check(path).findings if each.slug == "vague-words")
    place = check(path).source.place(word.evidence[0].path, word.evidence[0].offset)

    line = path.read_text("utf-8").splitlines()[place.line - 1]
    assert line[place.column - 1 :] == "as necessary"
