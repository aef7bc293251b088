"""Figures of the patterns that the contractor may cut in place of that of the area."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest

from specwriter.cli.main import outcome
from specwriter.model import Job
from specwriter.worksheet import Figure, work_out
from tests.support import job, patched, text_of

BASE = "complete/longitudinal_grooving"
NARROW = {"name": "narrow", "groove": {"width": "1/8 in", "depth": "1/8 in", "spacing": "5/8 in"}}
COUNTED = {"name": "by count", "groove": {"width": "0.095 in", "per_foot": "16 per ft"}}
PATCHES: dict[str, Any] = {"areas.mainline.alternatives": [NARROW, COUNTED]}
OF_THE_SITE = {"areas", "lots", "passes"}


def with_both() -> Job:
    return job(BASE, PATCHES)


def of(name: str | None) -> list[Figure]:
    return [each for each in work_out(with_both()).figures if each.alternative == name]


@pytest.mark.parametrize(
    ("slug", "value"),
    [
        # 12 / 0.625; 1000 / 15.875
        ("grooves-per-length", "19.2 per ft (63 per m)"),
        # 0.125 / 0.625
        ("kerf-share", "20 percent"),
        # 0.625 - 0.125
        ("land", "0.5 in (12.7 mm)"),
        # 0.125 x 0.125 / 0.625 = 0.025 in; 0.635 mm
        ("groove-share", "0.025 in (0.64 mm)"),
    ],
)
def test_an_alternative_has_the_figures_of_its_own_grooves(slug: str, value: str) -> None:
    assert [each.value for each in of("narrow") if each.slug == slug] == [value]


def test_the_figures_of_the_area_are_those_without_alternatives() -> None:
    assert list(work_out(job(BASE)).figures) == of(None)


def test_a_figure_that_rests_on_nothing_of_the_alternative_is_not_told_again() -> None:
    told = of("narrow")

    assert told
    assert all(any(".alternatives.0." in each.path for each in one.inputs) for one in told)
    assert not {each.slug for each in told} & OF_THE_SITE


def test_the_alternative_alone_is_what_a_figure_waits_for() -> None:
    waiting = [each for each in work_out(with_both()).waiting if each.alternative]

    assert {each.alternative for each in waiting} == {"by count"}
    assert {each.because for each in waiting} == {"not given: groove depth"}


def test_the_text_gives_each_alternative_a_heading_behind_its_area(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = tmp_path / "job.yaml"
    path.write_text(patched(text_of(BASE), PATCHES), "utf-8")
    outcome(["worksheet", str(path)])
    text = capsys.readouterr().out
    heads = [line for line in text.splitlines() if line.isupper() or line.startswith("AREA")]

    assert heads == [
        "AREA mainline",
        "AREA mainline, ALTERNATIVE narrow",
        "AREA mainline, ALTERNATIVE by count",
        "THE WHOLE JOB",
        "NOT COMPUTED",
    ]
    assert "in mainline, alternative by count: not" in text


def test_every_figure_that_is_printed_says_where_it_is_valid(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = tmp_path / "job.yaml"
    path.write_text(text_of(BASE), "utf-8")
    outcome(["worksheet", str(path)])
    text = capsys.readouterr().out

    assert text.count("Source: ") == len(work_out(job(BASE)).figures)
    assert text.count("Valid: ") == text.count("Source: ")
