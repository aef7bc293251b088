"""House settings may stand in a file of their own; each value keeps the place where it stands."""

from __future__ import annotations

from pathlib import Path

import pytest

from specwriter.model import build_job
from specwriter.source import Source, read_source
from specwriter.workflow import check
from tests.support import patched, text_of


def read(folder: Path, house: str | None, **settings: str) -> Source:
    job = patched(text_of("diamond_grinding"), {"settings": {"file": "house.yaml", **settings}})
    (folder / "job.yaml").write_text(job, encoding="utf-8")
    if house is not None:
        (folder / "house.yaml").write_text(house, encoding="utf-8")
    return read_source(folder / "job.yaml")


def test_the_settings_of_the_file_hold_in_the_job(tmp_path: Path) -> None:
    source = read(tmp_path, "# our house\noverlap: at most 1 in\nduty_verb: must\n")

    settings = build_job(source.data or {}).settings
    assert settings is not None
    assert (str(settings.overlap), settings.duty_verb) == ("at most 1 in", "must")


def test_what_the_job_says_goes_before_the_file(tmp_path: Path) -> None:
    source = read(tmp_path, "overlap: at most 1 in\n", overlap="at most 2 in")

    assert (source.data or {})["settings"]["overlap"] == "at most 2 in"
    assert source.place("settings.overlap").file.endswith("job.yaml")


def test_a_setting_of_the_file_has_its_place_there(tmp_path: Path) -> None:
    place = read(tmp_path, "# our house\noverlap: at most 1 in\n").place("settings.overlap")

    assert (Path(place.file).name, place.line, place.column) == ("house.yaml", 2, 10)


def test_a_finding_names_the_file_of_the_setting(tmp_path: Path) -> None:
    read(tmp_path, "overlap: at most 1 in\n")
    path = tmp_path / "job.yaml"
    job = path.read_text("utf-8")
    path.write_text(patched(job, {"areas.mainline.coverage.overlap": "at most 2 in"}), "utf-8")

    result = check(path)

    (finding,) = (each for each in result.findings if each.slug == "looser-than-house-setting")
    places = [result.source.place(each.path) for each in finding.evidence]
    assert [Path(place.file).name for place in places] == ["job.yaml", "house.yaml"]


@pytest.mark.parametrize(
    ("house", "line", "column", "says"),
    [
        pytest.param(None, 1, 1, "no such file", id="no file"),
        pytest.param("overlap: at most 1 in\noverlapp: 2 in\n", 2, 1, "overlapp", id="misspelt"),
        pytest.param("overlap: broad\n", 1, 10, "broad", id="no value"),
        pytest.param("overlap: 1 in\noverlap: 2 in\n", 2, 1, "in line 1", id="twice"),
        pytest.param("- overlap\n", 1, 1, "", id="a list"),
        pytest.param("", 1, 1, "", id="empty"),
        pytest.param("overlap: [\n", 2, 1, "", id="not closed"),
    ],
)
def test_a_fault_of_the_file_is_told_with_its_place_there(
    tmp_path: Path, house: str | None, line: int, column: int, says: str
) -> None:
    source = read(tmp_path, house)

    assert source.faults
    fault = source.faults[0]
    assert Path(fault.place.file).name == "house.yaml"
    assert says in fault.says
    if says and house is not None:
        assert (fault.place.line, fault.place.column) == (line, column)
