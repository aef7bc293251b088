"""The report as it is read: goldens of the examples, faults, colour, what was not checked."""

from __future__ import annotations

from pathlib import Path

import pytest

from specwriter.diagnostic import Fault, Place
from specwriter.report.check_text import check_text
from specwriter.report.fault_text import fault_text
from specwriter.source import Source
from specwriter.workflow import check
from tests.conftest import Golden
from tests.support import EXAMPLES, patched, text_of


@pytest.mark.parametrize("name", sorted(path.name for path in EXAMPLES.iterdir()))
def test_the_report_of_an_example_is_as_it_stands(
    name: str, golden: Golden, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(EXAMPLES / name)

    golden(EXAMPLES / name / "check.txt", check_text(check(Path("job.yaml"))))


def test_colour_touches_the_grade_alone() -> None:
    result = check(EXAMPLES / "as-received" / "job.yaml")
    plain, coloured = check_text(result), check_text(result, colour=True)

    assert "\033[1;31mCONFLICT\033[0m in ring_road" in coloured
    for code in ("\033[1;31m", "\033[1;33m", "\033[1;35m", "\033[1;36m", "\033[0m"):
        coloured = coloured.replace(code, "")
    assert coloured == plain


def test_every_check_that_could_not_look_is_listed_when_asked() -> None:
    result = check(EXAMPLES / "as-received" / "job.yaml")
    listed = check_text(result, every_check=True)

    for each in result.not_run:
        assert each.slug in listed


def test_no_line_is_too_wide_to_be_read() -> None:
    text = check_text(check(EXAMPLES / "as-received" / "job.yaml"))

    prose = [line for line in text.splitlines() if "job.yaml:" not in line]
    assert max(map(len, prose)) <= 96


def test_an_accepted_finding_stays_in_sight(tmp_path: Path) -> None:
    entry = {
        "finding": "index-instrument",
        "at": "areas.mainline.smoothness.instrument",
        "because": "no profiler this season",
        "by": "pavement engineer",
        "on": "2027-02-01",
    }
    path = tmp_path / "job.yaml"
    path.write_text(
        patched(
            text_of("complete/diamond_grinding"),
            {
                "areas.mainline.smoothness.instrument": "profilograph",
                "areas.mainline.smoothness.sensor": None,
                "areas.mainline.smoothness.sensor_width": None,
                "accepted": [entry, {**entry, "finding": "ride-method"}],
            },
        ),
        encoding="utf-8",
    )

    text = check_text(check(path))

    assert "ACCEPTED conflict in mainline" in text
    assert "Accepted by pavement engineer on 2027-02-01: no profiler this season" in text
    assert "nothing found; 2 accepted" in text


def test_the_marker_stands_under_its_word_behind_tabs() -> None:
    place = Place(file="job.yaml", line=1, column=9)
    fault = Fault(
        place=place, says="there is no key 'agensy'", todo="did you mean agency?", width=6
    )
    source = Source(file="job.yaml", text="title:\tXagensy: B\n", data=None, faults=(fault,))

    lines = fault_text(source).splitlines()

    assert lines == [
        "job.yaml:1:9: there is no key 'agensy'",
        "   title:\tXagensy: B",
        "         \t ^^^^^^",
        "   did you mean agency?",
        "",
        "1 fault; the job was not checked.",
    ]
