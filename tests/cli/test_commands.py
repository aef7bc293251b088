"""What each command answers, where it answers, and the exit code it leaves with."""

from __future__ import annotations

import json
import subprocess
import sys
from pathlib import Path
from typing import Any

import pytest

from specwriter.cli import exit_codes
from specwriter.cli.main import COMMANDS, outcome
from tests.support import EXAMPLES, patched, text_of

CLEAN = EXAMPLES / "urban-grinding" / "job.yaml"
CLASHING = EXAMPLES / "as-received" / "job.yaml"
OPEN = {
    "areas.mainline.smoothness": {
        "index": "MRI",
        "limit": "at most 75 in/mi",
        "instrument": "inertial_profiler",
    }
}


@pytest.fixture
def faulty(tmp_path: Path) -> Path:
    path = tmp_path / "faulty.yaml"
    path.write_text("format: 1\nproject: {titel: Grinding}\n", encoding="utf-8")
    return path


@pytest.fixture
def undecided(tmp_path: Path) -> Path:
    path = tmp_path / "undecided.yaml"
    path.write_text(patched(text_of("diamond_grinding"), OPEN), encoding="utf-8")
    return path


def test_a_clean_job_is_ok(capsys: pytest.CaptureFixture[str]) -> None:
    assert outcome(["check", str(CLEAN)]) == exit_codes.OK
    assert "nothing found" in capsys.readouterr().out


def test_a_conflict_is_found(capsys: pytest.CaptureFixture[str]) -> None:
    assert outcome(["check", str(CLASHING)]) == exit_codes.FOUND
    assert "CONFLICT in ring_road" in capsys.readouterr().out


@pytest.mark.parametrize(
    ("grade", "code"),
    [("conflict", exit_codes.OK), ("open", exit_codes.FOUND), ("note", exit_codes.FOUND)],
)
def test_the_grade_asked_for_decides(undecided: Path, grade: str, code: int) -> None:
    assert outcome(["check", str(undecided), "--fail-on", grade]) == code


def test_a_faulty_job_cannot_be_read(faulty: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert outcome(["check", str(faulty)]) == exit_codes.UNREADABLE
    out = capsys.readouterr().out
    assert f"{faulty}:2:11: " in out
    assert "did you mean" in out
    assert "^^^^^" in out


def test_the_worst_of_several_files_decides(faulty: Path, tmp_path: Path) -> None:
    missing = tmp_path / "missing.yaml"

    assert outcome(["check", str(CLEAN), str(CLASHING)]) == exit_codes.FOUND
    assert outcome(["check", str(CLASHING), str(faulty)]) == exit_codes.UNREADABLE
    assert outcome(["check", str(faulty), str(missing)]) == exit_codes.USAGE


def test_a_defect_is_named_and_never_passes(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    def breaks(job: Any) -> Any:
        raise ZeroDivisionError("no pitch")

    monkeypatch.setattr("specwriter.reconcile.reconcile", breaks)

    assert outcome(["check", str(CLASHING)]) == exit_codes.DEFECT
    out = capsys.readouterr().out
    assert "ZeroDivisionError: no pitch" in out
    assert "index-instrument" in out


def test_a_defect_outside_the_checks_is_one_line(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    def breaks(*_: Any) -> Any:
        raise KeyError("pitch")

    monkeypatch.setattr("specwriter.workflow.check", breaks)

    assert outcome(["check", str(CLEAN)]) == exit_codes.DEFECT
    error = capsys.readouterr().err
    assert error.count("\n") == 1
    assert "KeyError" in error


@pytest.mark.parametrize(
    ("arguments", "words"),
    [
        (["chek", "x"], "did you mean check?"),
        (["check", "--formt", "json", "x"], "--format"),
        (["check"], "JOB"),
        (["check", "no-such-file.yaml"], "there is no such file"),
        (["check", str(EXAMPLES)], "folder"),
        (["check", "--fail-on", "error", str(CLEAN)], "conflict"),
        (["draft", str(CLEAN), "--to", "x", "--format", "pdf"], "docx, html, md"),
        (["draft", str(CLEAN)], "--to"),
        (["draft", str(CLEAN), "--to", "x", "--clauses", "no-such-folder"], "no-such-folder"),
        (["compare", str(CLEAN), "no-such-file.yaml"], "there is no such file"),
        (["explain", "index-instrumnt"], "did you mean index-instrument?"),
        (["explain"], "--all"),
        (["new", "diamond-griding", "x.yaml"], "did you mean diamond_grinding?"),
        (["new", "diamond_grinding", str(CLEAN)], "--force"),
    ],
)
def test_a_wrong_call_is_one_line_on_stderr(
    arguments: list[str], words: str, capsys: pytest.CaptureFixture[str]
) -> None:
    assert outcome(arguments) == exit_codes.USAGE

    out, error = capsys.readouterr()
    assert out == ""
    assert error.count("\n") == 1
    assert words in error


def test_every_command_has_a_page_of_help(capsys: pytest.CaptureFixture[str]) -> None:
    for name in COMMANDS:
        assert outcome([name, "--help"]) == exit_codes.OK
        assert f"specwriter {name}" in capsys.readouterr().out


def test_json_says_where_each_finding_stands(capsys: pytest.CaptureFixture[str]) -> None:
    outcome(["check", str(CLASHING), "--format", "json"])
    answer = json.loads(capsys.readouterr().out)

    assert answer["format"] == 1
    (job,) = answer["jobs"]
    finding = next(each for each in job["findings"] if each["slug"] == "index-instrument")
    assert finding["grade"] == "conflict"
    assert finding["places"][1] == {
        "path": "areas.ring_road.smoothness.instrument",
        "label": "instrument",
        "written": "profilograph",
        "line": 47,
        "column": 19,
        "end": 31,
    }
    assert job["counts"]["conflict"] == sum(each["grade"] == "conflict" for each in job["findings"])
    assert set(job) == {
        *("file", "readable", "faults", "findings", "accepted", "not_run", "verdicts"),
        *("tables", "defects", "counts", "summary"),
    }


def test_several_files_make_one_page_and_one_that_is_not_there_is_one_line(
    faulty: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    absent = tmp_path / "absent.yaml"
    paths = [str(CLASHING), str(faulty), str(absent)]

    code = outcome(["check", *paths, "--format", "html"])

    out, err = capsys.readouterr()
    assert code == outcome(["check", *paths])
    assert out.count("<h1>Check of 2 files</h1>") == 1
    assert out.count("<h2>") == 2
    assert err.startswith(f"specwriter: {absent}: ")
    assert len(err.splitlines()) == 1


def test_json_of_a_faulty_job_holds_its_faults(
    faulty: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert outcome(["check", str(faulty), "--format", "json"]) == exit_codes.UNREADABLE

    (job,) = json.loads(capsys.readouterr().out)["jobs"]
    assert job["readable"] is False
    assert {"line", "column", "end", "says", "todo"} == set(job["faults"][0])


def test_a_comparison_with_a_faulty_job_reports_its_faults(
    faulty: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert outcome(["compare", str(CLEAN), str(faulty)]) == exit_codes.UNREADABLE
    assert f"{faulty}:2:11: " in capsys.readouterr().out
    assert outcome(["compare", str(faulty), str(CLEAN), "--format", "json"]) == 3
    (job,) = json.loads(capsys.readouterr().out)["jobs"]
    assert job["file"] == str(faulty)


def test_a_page_that_cannot_compare_shows_the_faults_as_a_page(
    faulty: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert outcome(["compare", str(faulty), str(CLEAN), "--format", "html"]) == 3

    assert "<mark>titel</mark>" in capsys.readouterr().out


def test_a_new_job_is_written_and_can_be_read(tmp_path: Path) -> None:
    path = tmp_path / "job.yaml"

    assert outcome(["new", "runway-grooving", str(path)]) == exit_codes.OK
    assert outcome(["check", str(path)]) == exit_codes.OK


def test_a_comparison_fails_only_when_asked(tmp_path: Path) -> None:
    other = tmp_path / "job.yaml"
    other.write_text(
        patched(
            text_of("urban-grinding"), {"areas.mainline.smoothness.instrument": "profilograph"}
        ),
        encoding="utf-8",
    )

    assert outcome(["compare", str(CLEAN), str(other)]) == exit_codes.OK
    assert outcome(["compare", str(CLEAN), str(other), "--fail-on", "difference"]) == 1
    assert outcome(["compare", str(CLEAN), str(other), "--fail-on", "conflict"]) == 1
    assert outcome(["compare", str(CLEAN), str(CLEAN), "--fail-on", "difference"]) == 0


def test_every_check_is_explained(capsys: pytest.CaptureFixture[str]) -> None:
    assert outcome(["explain", "--all"]) == exit_codes.OK
    assert "How to settle it" in capsys.readouterr().out


def test_the_schema_is_printed_whole(capsys: pytest.CaptureFixture[str]) -> None:
    assert outcome(["schema"]) == exit_codes.OK
    text = capsys.readouterr().out
    assert outcome(["schema", "--path"]) == exit_codes.OK

    assert Path(capsys.readouterr().out.strip()).read_text(encoding="utf-8") == text
    assert json.loads(text)["required"] == ["format", "project", "areas"]


def test_a_reader_who_closes_the_pipe_sees_no_traceback() -> None:
    done = subprocess.run(
        f"{sys.executable} -m specwriter schema | head -1",
        shell=True,
        capture_output=True,
        text=True,
        check=True,
        cwd=EXAMPLES.parent,
    )

    assert done.stderr == ""
