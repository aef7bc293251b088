"""A draft is refused, written whole, or not written at all."""

from __future__ import annotations

from pathlib import Path

import pytest

from specwriter.cli import exit_codes
from specwriter.cli.main import outcome
from tests.support import EXAMPLES, patched, text_of

CLEAN = EXAMPLES / "urban-grinding" / "job.yaml"
CLASHING = EXAMPLES / "as-received" / "job.yaml"


def test_every_format_is_written_beside_nothing_else(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    code = outcome(["draft", str(CLEAN), "--to", str(tmp_path), "--format", "docx,html,md"])

    assert code == exit_codes.OK
    assert sorted(path.name for path in tmp_path.iterdir()) == [
        "SP-614.docx",
        "SP-614.html",
        "SP-614.md",
    ]
    out, error = capsys.readouterr()
    assert "nothing found" in out
    assert "open" in error


def test_one_file_is_named_by_its_ending(tmp_path: Path) -> None:
    path = tmp_path / "out" / "provision.md"

    assert outcome(["draft", str(CLEAN), "--to", str(path)]) == exit_codes.OK
    assert path.is_file()


def test_conflicts_refuse_the_draft(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert outcome(["draft", str(CLASHING), "--to", str(tmp_path)]) == exit_codes.FOUND
    assert list(tmp_path.iterdir()) == []
    assert "--with-conflicts" in capsys.readouterr().err


def test_a_draft_with_conflicts_says_so(tmp_path: Path) -> None:
    path = tmp_path / "draft.md"

    code = outcome(["draft", str(CLASHING), "--to", str(path), "--with-conflicts"])

    assert code == exit_codes.OK
    assert "UNSETTLED CONFLICTS" in path.read_text(encoding="utf-8")


def test_an_existing_file_is_kept_unless_forced(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = tmp_path / "provision.md"
    path.write_text("by hand", encoding="utf-8")

    assert outcome(["draft", str(CLEAN), "--to", str(path)]) == exit_codes.USAGE
    assert path.read_text(encoding="utf-8") == "by hand"
    assert "--force" in capsys.readouterr().err
    assert outcome(["draft", str(CLEAN), "--to", str(path), "--force"]) == exit_codes.OK
    assert "by hand" not in path.read_text(encoding="utf-8")


def test_a_file_in_place_of_the_folder_is_one_line(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    inside = tmp_path / "taken"
    inside.write_text("", encoding="utf-8")

    assert outcome(["draft", str(CLEAN), "--to", str(inside)]) == exit_codes.USAGE
    assert outcome(["draft", str(CLEAN), "--to", str(inside / "x.md")]) == exit_codes.USAGE
    assert capsys.readouterr().err.count("\n") == 2


def test_nothing_is_left_behind_when_a_file_is_in_the_way(tmp_path: Path) -> None:
    (tmp_path / "SP-614.md").write_text("by hand", encoding="utf-8")

    code = outcome(["draft", str(CLEAN), "--to", str(tmp_path), "--format", "html,md"])

    assert code == exit_codes.USAGE
    assert [path.name for path in tmp_path.iterdir()] == ["SP-614.md"]


def test_requirements_that_no_clause_states_are_counted(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    job, own = tmp_path / "job.yaml", tmp_path / "own" / "common" / "residue.md"
    job.write_text(patched(text_of("runway_grooving"), {"residue.ph": "6.0 to 9.0"}), "utf-8")
    own.parent.mkdir(parents=True)
    own.write_text(
        "---\nid: common.residue\ntitle: R\npart: construction\norder: 600\n---\nR.\n", "utf-8"
    )

    arguments = ["draft", str(job), "--to", str(tmp_path / "out")]
    code = outcome([*arguments, "--clauses", str(tmp_path / "own")])

    assert code == exit_codes.OK
    assert "no clause states" in capsys.readouterr().err


def test_a_house_format_that_does_not_exist_is_refused_at_its_line(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    job = tmp_path / "job.yaml"
    job.write_text(
        text_of("diamond_grinding") + "settings:\n  house_format: three_parts\n", "utf-8"
    )

    code = outcome(["draft", str(job), "--to", str(tmp_path / "out")])

    assert code == exit_codes.USAGE
    assert "house format 'three_parts'; did you mean 'three_part'?" in capsys.readouterr().err
    assert not (tmp_path / "out").exists()
