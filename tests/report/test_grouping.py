"""Findings that say the same of several areas are told once; others stay apart."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

from specwriter.diagnostic import Evidence, Finding, Grade
from specwriter.report.check_text import check_text
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
    (one,) = grouped([finding("north"), finding("south"), finding("ramp")])

    assert one.area == "north, south and ramp"
    assert [each.path for each in one.evidence] == [
        "areas.north.texture",
        "areas.south.texture",
        "areas.ramp.texture",
    ]


def test_what_differs_in_words_grade_or_scope_stays_apart() -> None:
    some = [
        finding("north"),
        finding("south", "Other words."),
        replace(finding("ramp"), grade=Grade.CAUTION),
        finding(None),
    ]

    assert [each.area for each in grouped(some)] == ["north", "south", "ramp", None]


def test_a_report_counts_every_finding_and_tells_alike_ones_once(tmp_path: Path) -> None:
    path = tmp_path / "job.yaml"
    area = {"texture": "diamond_grinding", "place": "roadway"}
    patches = {"conditions.curbs": True, "areas.ramp": area, "areas.side": area}
    path.write_text(patched(text_of("diamond_grinding"), patches), encoding="utf-8")

    text = check_text(check(path))

    assert text.count("no strip is allowed for along the kerb") == 1
    assert "OPEN in mainline, ramp and side: no strip" in text


def test_the_place_of_a_word_is_the_column_of_the_word(tmp_path: Path) -> None:
    path = tmp_path / "job.yaml"
    patches = {"areas.mainline.testing.texture": {"remedy": "regrind as necessary"}}
    path.write_text(patched(text_of("diamond_grinding"), patches), encoding="utf-8")

    (word,) = (each for each in check(path).findings if each.slug == "vague-words")
    place = check(path).source.place(word.evidence[0].path, word.evidence[0].offset)

    line = path.read_text("utf-8").splitlines()[place.line - 1]
    assert line[place.column - 1 :] == "as necessary"
