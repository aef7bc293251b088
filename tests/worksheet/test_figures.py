"""Each figure against a value worked by hand, and what it waits for when an input is missing."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
import yaml

from specwriter.worksheet import work_out
from specwriter.worksheet.registry import all_figures
from tests.support import TEXTURES, job

CASES: list[dict[str, Any]] = yaml.safe_load(
    (Path(__file__).parent / "figures.yaml").read_text("utf-8")
)


def cases(kind: str) -> Iterator[Any]:
    for case in CASES:
        for title, expected in case.get(kind, {}).items():
            name = f"{case['figure']}: {title}: {expected}"
            yield pytest.param(case, title, expected, id=name)


@pytest.mark.parametrize(("case", "title", "expected"), tuple(cases("gives")))
def test_a_figure_has_the_value_worked_by_hand(
    case: dict[str, Any], title: str, expected: str
) -> None:
    sheet = work_out(job(case["base"], case["patches"]))
    found = [each for each in sheet.figures if (each.slug, each.title) == (case["figure"], title)]

    assert [each.value for each in found] == [expected]
    assert found[0].source
    assert found[0].validity


@pytest.mark.parametrize(("case", "title", "expected"), tuple(cases("waits")))
def test_a_figure_without_an_input_says_what_it_waits_for(
    case: dict[str, Any], title: str, expected: str
) -> None:
    sheet = work_out(job(case["base"], case["patches"]))
    found = [each for each in sheet.waiting if (each.slug, each.title) == (case["figure"], title)]

    assert [each.because for each in found] == [expected]
    assert title not in [each.title for each in sheet.figures if each.slug == case["figure"]]


def test_every_file_of_figures_has_a_case() -> None:
    assert {case["figure"] for case in CASES} == {each.slug for each in all_figures()}


@pytest.mark.parametrize("texture", TEXTURES)
def test_the_smallest_job_of_each_texture_breaks_no_figure(texture: str) -> None:
    sheet = work_out(job(texture))

    assert sheet.broken == ()
    assert sheet.figures
