"""Two versions at the command line, in whatever form they come."""

from __future__ import annotations

import json
import shutil
import subprocess
import sys
from pathlib import Path

import docx
import pytest

from specwriter.cli import exit_codes
from specwriter.cli.main import outcome
from tests.compare.redline.accepting import accepted, lines, rejected
from tests.support import EXAMPLES, patched, text_of

OLD = EXAMPLES / "rural-grooving" / "job.yaml"
DRAFTED = EXAMPLES / "rural-grooving" / "provision.docx"
DEPTH = "areas.mainline.groove.depth"
LIMITED = {DEPTH: "1/8 in to 3/16 in", "project.revision": "1", "project.date": "2027-04-01"}

PLAIN = """\
1.1 Correction

The Contractor shall not cut again where the profile index exceeds 7 in/mi.

| Property | Judged on |
| --- | --- |
| Depth | mean |
"""


@pytest.fixture
def new(tmp_path: Path) -> Path:
    path = tmp_path / "new.yaml"
    path.write_text(patched(text_of("rural-grooving"), LIMITED), encoding="utf-8")
    return path


def compare(capsys: pytest.CaptureFixture[str], *arguments: object) -> tuple[int, str]:
    code = outcome(["compare", *map(str, arguments)])
    return code, capsys.readouterr().out


def test_jobs_are_told_by_requirement_and_by_the_clauses_they_change(
    new: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    code, out = compare(capsys, OLD, new)

    assert code == exit_codes.OK
    assert "TIGHTER, the contractor bears it: groove depth" in out
    assert "1 change calls for an addendum" in out
    assert "\nClauses affected\n" in out


def test_a_job_and_the_document_drafted_from_it_do_not_differ(
    capsys: pytest.CaptureFixture[str],
) -> None:
    code, out = compare(capsys, OLD, DRAFTED, "--fail-on", "difference")

    assert (code, out) == (exit_codes.OK, "Nothing differs.\n")


def test_a_document_edited_by_hand_is_held_against_its_own_job(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    edited = tmp_path / "edited.docx"
    document = docx.Document(str(DRAFTED))
    runs = [run for paragraph in document.paragraphs[60:] for run in paragraph.runs]
    run = next(run for run in runs if " not " in run.text)
    run.text = run.text.replace(" not ", " ", 1)
    document.save(str(edited))

    alone = compare(capsys, edited, "--fail-on", "difference")
    beside = compare(capsys, OLD, edited, "--fail-on", "difference")
    untouched = compare(capsys, DRAFTED, "--fail-on", "difference")

    assert alone[0] == beside[0] == exit_codes.FOUND
    assert 'A duty may turn on "not".' in alone[1]
    assert "was edited by hand in 1 place since it was drafted" in " ".join(beside[1].split())
    assert untouched == (exit_codes.OK, "Nothing differs.\n")


@pytest.mark.parametrize(
    ("was", "now", "told"),
    [
        ("shall not cut", "shall cut", 'Take care: A duty may turn on "not".'),
        ("7 in/mi", "7 m/km", "Take care: The number stands but its unit went from in/mi to m/km"),
        ("| mean", "| each", 'Take care: A duty may turn on "each", "mean".'),
        ("exceeds 7", "exceeds 5", "5 in/mi is 2 in/mi less than 7 in/mi."),
    ],
)
def test_texts_without_a_job_are_compared_by_their_words(
    was: str, now: str, told: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    old, new = tmp_path / "old.md", tmp_path / "new.txt"
    old.write_text(PLAIN, encoding="utf-8")
    new.write_text(PLAIN.replace(was, now), encoding="utf-8")

    code, out = compare(capsys, old, new, "--fail-on", "difference")

    assert code == exit_codes.FOUND
    assert told in out


def test_a_redline_and_a_memo_are_written_beside_the_report(
    new: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    redline, memo, word = (tmp_path / name for name in ("r.docx", "m.md", "m.docx"))

    first = compare(capsys, OLD, new, "--redline", redline, "--memo", memo, "--date", "2027-04-02")
    second = compare(capsys, OLD, new, "--memo", word, "--author", "Reviewer")
    again = compare(capsys, OLD, new, "--redline", redline)

    assert (first[0], second[0], again[0]) == (exit_codes.OK, exit_codes.OK, exit_codes.USAGE)
    content = redline.read_bytes()
    assert lines(rejected(content)) == lines(DRAFTED.read_bytes())
    assert "1/8 in to 3/16 in" in "\n".join(lines(accepted(content)))
    said = memo.read_text(encoding="utf-8")
    assert 'column "Route 9 travel lanes", delete the text and substitute the following:' in said
    assert said.splitlines()[0] == "# Change memo"
    paragraphs = [each.text for each in docx.Document(str(word)).paragraphs]
    assert paragraphs[0] == "Change memo"
    assert '"1/8 in to 3/16 in (3.2 to 4.8 mm)"' in paragraphs


def test_a_text_and_a_word_file_are_compared_with_their_numbers_written_out(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    redline = tmp_path / "r.docx"
    markdown = DRAFTED.with_suffix(".md")

    code, out = compare(capsys, markdown, DRAFTED, "--redline", redline)

    assert code == exit_codes.OK
    assert "Take care" not in out
    assert lines(accepted(redline.read_bytes()))[-1] == "End of special provision"


@pytest.mark.parametrize("form", ["json", "md", "html"])
def test_every_form_tells_the_change(
    form: str, new: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    code, out = compare(capsys, OLD, new, "--format", form)

    assert code == exit_codes.OK
    assert "1/8 in to 3/16 in" in out
    if form == "json":
        answer = json.loads(out)
        assert answer["changes"][0]["sense"] == "tighter"
        assert answer["versions"]["old"] == {
            "file": str(OLD),
            "holds_job": True,
            "note": "",
            "edited_by_hand": [],
        }
        assert any(change["clause"].startswith("3.") for change in answer["text"]["changes"])


@pytest.mark.parametrize(
    ("fail_on", "patches", "code"),
    [
        ("material", LIMITED, exit_codes.FOUND),
        ("material", {"areas.mainline.name": "Route 9 lanes"}, exit_codes.OK),
        ("difference", {"areas.mainline.name": "Route 9 lanes"}, exit_codes.FOUND),
        ("conflict", {"areas.mainline.land": {"width": "1/2 in"}}, exit_codes.FOUND),
        ("conflict", LIMITED, exit_codes.OK),
    ],
)
def test_what_fails_is_chosen(
    fail_on: str,
    patches: dict[str, object],
    code: int,
    tmp_path: Path,
    capsys: pytest.CaptureFixture[str],
) -> None:
    path = tmp_path / "new.yaml"
    path.write_text(patched(text_of("rural-grooving"), patches), encoding="utf-8")

    assert compare(capsys, OLD, path, "--fail-on", fail_on)[0] == code


@pytest.mark.parametrize(
    ("name", "content", "code", "says"),
    [
        ("broken.docx", b"PK\x03\x04 and no more", exit_codes.UNREADABLE, "is broken"),
        ("old.doc", b"\xd0\xcf\x11\xe0 old", exit_codes.UNREADABLE, "of the old kind"),
        ("latin.txt", b"caf\xe9", exit_codes.UNREADABLE, "not written in UTF-8"),
    ],
)
def test_a_document_that_cannot_be_read_is_one_line(
    name: str,
    content: bytes,
    code: int,
    says: str,
    tmp_path: Path,
    capsys: pytest.CaptureFixture[str],
) -> None:
    path = tmp_path / name
    path.write_bytes(content)

    assert outcome(["compare", str(OLD), str(path)]) == code
    said = capsys.readouterr().err
    assert says in said
    assert len(said.splitlines()) == 1


@pytest.mark.parametrize(
    "arguments",
    [
        ["--date", "yesterday"],
        ["--minor-quantity", "some"],
        ["--redline", "r.pdf"],
        ["--memo", "m.txt"],
        ["--clauses", "nowhere"],
        ["--git"],
    ],
)
def test_a_wrong_option_is_refused(arguments: list[str], new: Path) -> None:
    assert outcome(["compare", str(OLD), str(new), *arguments]) == exit_codes.USAGE


def test_one_file_without_a_job_is_not_enough(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = tmp_path / "some.md"
    path.write_text(PLAIN, encoding="utf-8")

    assert outcome(["compare", str(path)]) == exit_codes.UNREADABLE
    assert "holds no job" in capsys.readouterr().err


@pytest.mark.parametrize(
    ("old", "new", "more", "told"),
    [
        (OLD, OLD, (), "a/job.yaml\n\nNothing differs.\n"),
        (OLD, OLD, ("b/job.yaml", "similarity index 100%\n"), "a/job.yaml → b/job.yaml\n"),
        ("/dev/null", OLD, (), "a/job.yaml is new.\n"),
        (OLD, "/dev/null", (), "a/job.yaml is gone.\n"),
        ("broken", OLD, (), "a/job.yaml (old):1:1: "),
        (OLD, "broken", (), "git diff --no-ext-diff shows its lines."),
        ("windows", OLD, (), "Nothing differs."),
    ],
)
def test_git_is_never_stopped(
    old: Path | str,
    new: Path | str,
    more: tuple[str, ...],
    told: str,
    tmp_path: Path,
    capsys: pytest.CaptureFixture[str],
) -> None:
    (tmp_path / "broken").write_text("[", encoding="utf-8")
    text = "\ufeff" + OLD.read_text(encoding="utf-8").replace("\n", "\r\n")
    (tmp_path / "windows").write_bytes(text.encode("utf-8"))
    first, second = (
        str(tmp_path / side) if side in ("broken", "windows") else str(side) for side in (old, new)
    )

    arguments = ["a/job.yaml", first, "0" * 40, "100644", second, "1" * 40, "100644", *more]
    code = outcome(["compare", "--git", *arguments])

    assert code == exit_codes.OK
    assert told in capsys.readouterr().out


def test_git_gives_the_path_alone_of_what_is_not_merged(
    capsys: pytest.CaptureFixture[str],
) -> None:
    assert outcome(["compare", "--git", "a/job.yaml"]) == exit_codes.OK
    assert capsys.readouterr().out == "a/job.yaml is not merged.\n\n"


@pytest.mark.skipif(shutil.which("git") is None, reason="git is not installed")
def test_git_shows_a_job_by_its_requirements(tmp_path: Path) -> None:
    def git(*arguments: str) -> str:
        identity = ["-c", "user.name=x", "-c", "user.email=x@example.invalid"]
        done = subprocess.run(
            ["git", *identity, *arguments],
            cwd=tmp_path,
            capture_output=True,
            text=True,
            check=True,
            env={
                "PATH": "/usr/bin:/bin",
                "PYTHONPATH": str(EXAMPLES.parent),
                "HOME": str(tmp_path),
            },
        )
        return done.stdout

    job = tmp_path / "job.yaml"
    git("init", "--quiet")
    job.write_text(text_of("rural-grooving"), encoding="utf-8")
    (tmp_path / ".gitattributes").write_text("job.yaml diff=specwriter\n", encoding="utf-8")
    git("config", "diff.specwriter.command", f"{sys.executable} -m specwriter compare --git")
    git("add", ".")
    git("commit", "--quiet", "-m", "first")
    job.write_text(patched(text_of("rural-grooving"), LIMITED), encoding="utf-8")

    shown = git("diff")

    assert shown.startswith("job.yaml\n")
    assert "TIGHTER, the contractor bears it: groove depth" in shown
