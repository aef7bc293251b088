"""A drafted Word file carries all that it was drafted from, and is checked far from those files."""

from __future__ import annotations

import json
import shutil
import zipfile
from collections.abc import Callable
from functools import partial
from pathlib import Path

import pytest

from specwriter.assemble.library import library_root
from specwriter.cli import exit_codes
from specwriter.cli.main import outcome
from tests.cli.test_check_document import edited
from tests.support import EXAMPLES, patched

HOUSE = "# our house\nduty_verb: shall\nhouse_format: three_part\n"
JOB = (EXAMPLES / "rural-grooving" / "job.yaml").read_text("utf-8")
OUTLINE = """\
default: ours
formats:
  ours:
    title: Our own four parts
    numbering: plain
    not_used: Not used
    parts:
      - {id: description, title: What the Work Is}
      - {id: materials, title: Materials}
      - {id: construction, title: How the Work Is Done}
      - {id: paid, title: How the Work Is Paid, holds: [measurement, payment]}
"""


Folders = tuple[Callable[[Path], Path], ...]


def replacing(folder: Path) -> Path:
    """An agency's folder of three clauses of its own."""
    names = sorted(path.relative_to(library_root()) for path in library_root().glob("common/*.md"))
    for name in names[:3]:
        text = (library_root() / name).read_text("utf-8")
        target = folder / name
        target.parent.mkdir(parents=True, exist_ok=True)
        target.write_text(text.rstrip("\n") + "\n\nThis is the agency's own text.\n", "utf-8")
    return folder


def formatting(folder: Path) -> Path:
    """An agency's folder with a house format and nothing else."""
    folder.mkdir(parents=True, exist_ok=True)
    (folder / "outline.yaml").write_text(OUTLINE, "utf-8")
    return folder


def drafted(folder: Path, *, house: bool, clauses: Path | None) -> Path:
    """A provision drafted in a folder that is gone afterwards."""
    work = folder / "work"
    work.mkdir(exist_ok=True)
    text = patched(JOB, {"settings": {"file": "house.yaml"}}) if house else JOB
    (work / "job.yaml").write_text(text, "utf-8")
    (work / "house.yaml").write_text(HOUSE, "utf-8")
    target = folder / "elsewhere" / "provision.docx"
    target.parent.mkdir()
    own = ["--clauses", str(clauses)] if clauses else []
    assert outcome(["draft", str(work / "job.yaml"), "--to", str(target), *own]) == exit_codes.OK
    shutil.rmtree(work)
    if clauses:
        shutil.rmtree(clauses)
    return target


CASES = [
    pytest.param(True, (), id="settings file"),
    pytest.param(False, (formatting,), id="format file"),
    pytest.param(False, (replacing,), id="three clauses"),
    pytest.param(True, (replacing,), id="settings and clauses"),
    pytest.param(True, (replacing, formatting), id="settings, clauses and format"),
]


def provision(tmp_path: Path, house: bool, folders: Folders) -> Path:
    own = None
    for make in folders:
        own = make(tmp_path / "own clauses")
    return drafted(tmp_path, house=house, clauses=own)


@pytest.mark.parametrize(("house", "folders"), CASES)
def test_a_provision_is_as_drafted_without_the_files_it_was_made_from(
    tmp_path: Path,
    house: bool,
    folders: Folders,
    capsys: pytest.CaptureFixture[str],
) -> None:
    path = provision(tmp_path, house, folders)
    capsys.readouterr()

    assert outcome(["check", str(path), "--format", "json"]) == exit_codes.OK

    (answer,) = json.loads(capsys.readouterr().out)["jobs"]
    document = answer["document"]
    assert (document["whole"], document["changed"]) == (True, False)
    assert (document["undrafted"], document["differences"]) == ("", [])


@pytest.mark.parametrize(("house", "folders"), CASES)
def test_a_change_by_hand_is_still_the_only_one_shown(
    tmp_path: Path,
    house: bool,
    folders: Folders,
    capsys: pytest.CaptureFixture[str],
) -> None:
    path = edited(
        provision(tmp_path, house, folders),
        lambda xml: xml.replace("End of ", "The end of "),
    )
    capsys.readouterr()

    outcome(["check", str(path)])

    out = capsys.readouterr().out
    assert "The text was changed by hand since it was drafted, in 1 place:" in out

    outcome(["compare", str(path)])

    assert capsys.readouterr().out.endswith("\n1 reworded\n")


def _swapped(old: str, new: str, xml: str) -> str:
    return xml.replace(old, new)


def test_a_changed_file_inside_is_noticed(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = provision(tmp_path, True, (replacing,))
    for old, new in (("duty_verb: shall", "duty_verb: must"), ("agency's own", "agency's new")):
        changed = edited(path, partial(_swapped, old, new), "customXml/item1.xml")
        capsys.readouterr()

        outcome(["check", str(changed)])

        assert "was changed since the document was drafted" in capsys.readouterr().out


@pytest.mark.parametrize(
    ("kind", "says"),
    [
        ("settings", "It was drafted with the house settings 'house.yaml', and does not carry"),
        ("clauses", "name them with --clauses"),
    ],
)
def test_a_document_that_lost_a_file_says_so_and_blames_nobody(
    tmp_path: Path, kind: str, says: str, capsys: pytest.CaptureFixture[str]
) -> None:
    path = edited(
        provision(tmp_path, True, (replacing,)),
        lambda xml: "".join(
            piece.partition(f"</{kind}>")[2] if place else piece
            for place, piece in enumerate(xml.split(f"<{kind} "))
        ),
        "customXml/item1.xml",
    )
    capsys.readouterr()

    outcome(["check", str(path)])

    out = capsys.readouterr().out
    assert says in out
    assert "by hand" not in out


def test_other_clauses_that_are_named_go_before_those_inside(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = provision(tmp_path, False, (replacing,))
    capsys.readouterr()

    outcome(["check", str(path), "--clauses", str(formatting(tmp_path / "other"))])

    assert "would give another" in capsys.readouterr().out


def test_nothing_of_the_folder_is_carried_twice(tmp_path: Path) -> None:
    path = provision(tmp_path, True, (replacing, formatting))

    item = zipfile.ZipFile(path).read("customXml/item1.xml").decode()

    assert (item.count("<settings "), item.count("<clauses ")) == (1, 4)
