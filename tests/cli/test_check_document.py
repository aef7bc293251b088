"""A drafted Word file is checked by the job inside it, and its text is held against that job."""

from __future__ import annotations

import io
import json
import shutil
import subprocess
import zipfile
from collections.abc import Callable
from pathlib import Path

import docx
import pytest

from specwriter.cli import exit_codes
from specwriter.cli.main import outcome
from specwriter.reading import job_inside
from tests.support import EXAMPLES

JOB = EXAMPLES / "rural-grooving" / "job.yaml"
NAMES = ("rural-grooving", "urban-grinding", "as-received")


def edited(path: Path, change: Callable[[str], str], part: str = "word/document.xml") -> Path:
    """A copy of a Word file with the XML of one part changed."""
    source = zipfile.ZipFile(io.BytesIO(path.read_bytes()))
    target = path.with_name("edited.docx")
    with zipfile.ZipFile(target, "w") as package:
        for name in source.namelist():
            text = source.read(name)
            package.writestr(name, change(text.decode()).encode() if name == part else text)
    return target


@pytest.fixture
def provision(tmp_path: Path) -> Path:
    path = tmp_path / "provision.docx"
    assert outcome(["draft", str(JOB), "--to", str(path)]) == exit_codes.OK
    return path


@pytest.mark.parametrize("name", NAMES)
def test_an_untouched_example_is_as_it_was_drafted(
    name: str, capsys: pytest.CaptureFixture[str]
) -> None:
    outcome(["check", str(EXAMPLES / name / "provision.docx")])

    assert "The text is as it was drafted." in capsys.readouterr().out


def test_the_job_inside_is_checked(provision: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert outcome(["check", str(provision)]) == exit_codes.OK

    out = capsys.readouterr().out
    assert "checked is the job that the document carries inside" in out
    assert "nothing found" in out


def test_a_change_by_hand_is_shown_with_what_the_job_gives(
    provision: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    changed = edited(
        provision, lambda xml: xml.replace("Obtain the permit", "Do not obtain the permit")
    )
    capsys.readouterr()

    outcome(["check", str(changed)])

    out = capsys.readouterr().out
    assert "The text was changed by hand since it was drafted, in 1 place:" in out
    assert "stands: " in out
    assert "Do not obtain the permit" in out
    assert "by the job: " in out


def test_a_front_sheet_that_was_taken_out_is_no_change(provision: Path) -> None:
    document = docx.Document(str(provision))
    for paragraph in list(document.paragraphs):
        if paragraph.style is not None and str(paragraph.style.name).startswith("Front"):
            element = paragraph._element
            element.getparent().remove(element)
    document.save(str(provision))

    inside = job_inside(provision.read_bytes())

    assert inside is not None
    assert inside.changed is False
    assert inside.whole


def test_a_changed_job_inside_is_noticed(
    provision: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    changed = edited(provision, lambda xml: xml.replace("3/4 in", "7/8 in"), "customXml/item1.xml")

    outcome(["check", str(changed)])

    out = capsys.readouterr().out
    assert "The job inside was changed since the document was drafted." in out
    assert "this version of the tool and its clauses would give another" in out


def test_programs_are_told_the_same(provision: Path, capsys: pytest.CaptureFixture[str]) -> None:
    capsys.readouterr()
    assert outcome(["check", str(provision), "--format", "json"]) == exit_codes.OK

    (answer,) = json.loads(capsys.readouterr().out)["jobs"]
    assert answer["document"]["changed"] is False
    assert answer["document"]["differences"] == []


def test_a_word_file_without_a_job_is_refused(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = tmp_path / "other.docx"
    docx.Document().save(str(path))

    assert outcome(["check", str(path)]) == exit_codes.UNREADABLE
    assert "this Word file carries no job" in capsys.readouterr().out


@pytest.mark.parametrize("content", [b"", b"no zip", b"\xd0\xcf\x11\xe0 old"])
def test_a_broken_word_file_is_refused(
    tmp_path: Path, content: bytes, capsys: pytest.CaptureFixture[str]
) -> None:
    path = tmp_path / "broken.docx"
    path.write_bytes(content)

    assert outcome(["check", str(path)]) == exit_codes.UNREADABLE
    assert "Word file" in capsys.readouterr().out


def test_a_file_that_is_not_there_is_a_wrong_call(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert outcome(["check", str(tmp_path / "none.docx")]) == exit_codes.USAGE
    assert "no such file" in capsys.readouterr().err


@pytest.mark.skipif(shutil.which("soffice") is None, reason="the office suite is not installed")
def test_an_office_suite_that_saves_the_file_anew_changes_nothing(
    provision: Path, tmp_path: Path
) -> None:
    folder = tmp_path / "saved"
    subprocess.run(
        [
            *("soffice", f"-env:UserInstallation=file://{tmp_path}/profile", "--headless"),
            *("--convert-to", "docx", "--outdir", str(folder), str(provision)),
        ],
        check=True,
        capture_output=True,
    )

    inside = job_inside((folder / "provision.docx").read_bytes())

    assert inside is not None
    assert inside.whole
    assert inside.changed is False
