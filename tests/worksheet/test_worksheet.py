"""The worksheet as a whole: order, a figure that breaks, and the two forms of the report."""

from __future__ import annotations

import json
from collections.abc import Iterator
from pathlib import Path

import pytest

from specwriter.cli import exit_codes
from specwriter.cli.main import outcome
from specwriter.model import Job
from specwriter.report.worksheet_text import NOTICE
from specwriter.worksheet import Line, Waiting, work_out
from specwriter.worksheet.registry import TOPICS, Registered, all_figures
from tests.support import EXAMPLES, job, text_of

EXAMPLE = EXAMPLES / "rural-grooving" / "job.yaml"


def broken(job: Job) -> Iterator[Line]:
    yield Waiting(area=None, title="first", because="no reason")
    raise ZeroDivisionError("nothing to divide by")


def test_a_figure_that_breaks_stops_no_other() -> None:
    defect = Registered(slug="breaks", topic="groove", figures=broken)
    sheet = work_out(job("runway_grooving"), [defect, *all_figures()])

    assert [(each.slug, each.error) for each in sheet.broken] == [
        ("breaks", "ZeroDivisionError: nothing to divide by")
    ]
    assert len(sheet.figures) == len(work_out(job("runway_grooving")).figures)


def test_the_formulas_of_skid_numbers_are_for_no_other_scale() -> None:
    coefficient = {"measure": "Mu", "at_least": "0.82", "speed": "40 mph"}
    sheet = work_out(
        job(
            "runway_grooving",
            {"areas.runway.friction": coefficient, "conditions.posted_speed": "60 mph"},
        )
    )

    assert [each.because for each in sheet.waiting if "friction number" in each.title] == [
        "its formulas are not for Mu"
    ]
    assert not [each for each in sheet.figures if "friction number" in each.title]


def test_areas_come_one_after_the_other_and_the_whole_job_last() -> None:
    from specwriter.workflow import worksheet

    sheet = worksheet(EXAMPLE).worksheet
    assert sheet is not None
    order = list(dict.fromkeys(each.area for each in sheet.figures))

    assert order == ["mainline", "deck", None]


def test_topics_are_those_of_the_folders() -> None:
    assert {each.topic for each in all_figures()} <= set(TOPICS)


def test_the_text_names_place_source_and_caution(capsys: pytest.CaptureFixture[str]) -> None:
    assert outcome(["worksheet", str(EXAMPLE)]) == exit_codes.OK
    text = capsys.readouterr().out

    assert f"{EXAMPLE}:55:14" in text
    assert "Source: geometry." in text
    assert " ".join(text.split()).endswith(NOTICE)
    assert max(map(len, text.splitlines())) <= 96 + len(str(EXAMPLE))


def test_json_bounds_each_figure_and_places_its_inputs(capsys: pytest.CaptureFixture[str]) -> None:
    assert outcome(["worksheet", str(EXAMPLE), "--format", "json"]) == exit_codes.OK
    answer = json.loads(capsys.readouterr().out)
    kerf = next(each for each in answer["figures"] if each["slug"] == "kerf-share")

    assert answer["format"] == 1
    # 0.090 in of 25/32 in to 0.100 in of 23/32 in
    assert (kerf["low"], kerf["high"]) == (11.52, pytest.approx(13.9130435))
    assert kerf["unit"] == "percent"
    assert [each["line"] for each in kerf["inputs"]] == [55, 57]
    assert all(each["because"] for each in answer["waiting"])


@pytest.mark.parametrize("form", ["text", "json"])
def test_a_file_with_faults_is_unreadable_and_a_missing_one_a_usage_error(
    form: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    faulty = tmp_path / "job.yaml"
    faulty.write_text(text_of("runway_grooving").replace("1/4 in", "a quarter"), encoding="utf-8")

    assert outcome(["worksheet", str(faulty), "--format", form]) == exit_codes.UNREADABLE
    assert "quarter" in capsys.readouterr().out
    missing = str(tmp_path / "none.yaml")
    assert outcome(["worksheet", missing, "--format", form]) == exit_codes.USAGE
