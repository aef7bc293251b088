"""The clause library on the command line, and an agency's own folder put over it."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from specwriter.cli import exit_codes
from specwriter.cli.main import outcome
from tests.support import EXAMPLES, text_of

CLEAN = EXAMPLES / "urban-grinding" / "job.yaml"
OUTLINE = Path(__file__).parents[2] / "clauses" / "outline.yaml"
REPLACED = {
    "common.water": "Cut with water of the county.",
    "common.meeting": "Meet the Agency in the county yard before the first cut.",
    "diamond_grinding.blades": "Choose blades that leave the lands of the county.",
}


@pytest.fixture
def agency(tmp_path: Path) -> Path:
    """A folder that replaces three clauses and brings a house format of its own."""
    folder = tmp_path / "county"
    for name, text in REPLACED.items():
        part = "materials" if name == "common.water" else "construction"
        path = folder / Path(*name.split(".")).with_suffix(".md")
        path.parent.mkdir(parents=True, exist_ok=True)
        front = f"id: {name}\ntitle: Of the county\npart: {part}\norder: 15\n"
        only = "textures: [diamond_grinding]\n" if name.startswith("diamond") else ""
        told = 'expresses: ["areas.*.blade"]\n' if only else ""
        used = "{% if areas.blade.failed_allowed %}\nx\n{% endif %}\n" if only else ""
        path.write_text(f"---\n{front}{only}{told}---\n{text}\n{used}", "utf-8")
    own = OUTLINE.read_text("utf-8").replace("default: five_part", "default: county", 1)
    own = own.replace(
        "  five_part:\n    title: Highway, five parts", "  county:\n    title: County", 1
    )
    (folder / "outline.yaml").write_text(own.replace("Not used", "Reserved", 1), "utf-8")
    return folder


def test_the_library_is_listed_by_part_with_its_conditions(
    capsys: pytest.CaptureFixture[str],
) -> None:
    assert outcome(["clauses"]) == exit_codes.OK

    out = capsys.readouterr().out
    assert out.index("Description") < out.index("common.work") < out.index("common.water")
    assert "when conditions.loop_detectors" in out
    assert "three_part" in out


def test_a_job_is_told_why_each_clause_was_chosen_or_not(
    capsys: pytest.CaptureFixture[str],
) -> None:
    assert outcome(["clauses", str(CLEAN)]) == exit_codes.OK

    out = capsys.readouterr().out
    chosen, left = out.split("Not chosen")
    assert "the job has diamond grinding" in chosen
    assert "the job has no longitudinal grooving" in left
    assert "not true: areas.smoothness.improvement" in left


def test_the_choice_can_be_read_by_programs(capsys: pytest.CaptureFixture[str]) -> None:
    assert outcome(["clauses", str(CLEAN), "--format", "json"]) == exit_codes.OK

    entries = {each["id"]: each for each in json.loads(capsys.readouterr().out)["clauses"]}
    assert entries["common.work"]["chosen"] is True
    assert entries["longitudinal_grooving.grooves"]["chosen"] is False


def test_the_library_itself_passes_its_check(capsys: pytest.CaptureFixture[str]) -> None:
    assert outcome(["clauses", "--check"]) == exit_codes.OK
    assert "nothing found" in capsys.readouterr().out


def test_a_folder_that_replaces_three_clauses_is_in_the_document_with_its_provenance(
    agency: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = tmp_path / "out.md"

    assert outcome(["clauses", "--check", "--clauses", str(agency)]) == exit_codes.OK
    assert "3 clauses looked at; nothing found" in capsys.readouterr().out
    code = outcome(["draft", str(CLEAN), "--to", str(path), "--clauses", str(agency)])

    assert code == exit_codes.OK
    front, text = path.read_text("utf-8").split("\n---\n", 1)
    for name, sentence in REPLACED.items():
        assert sentence in text
        place = "/".join(name.split("."))
        file = f"{agency}/{place}.md, in place of clauses/{place}.md."
        assert file.replace("_", "\\_") in front
    assert f"House format county: {agency}/outline.yaml.".replace("_", "\\_") in front


@pytest.mark.parametrize(
    ("body", "front", "says"),
    [
        ("Grind 12 passes.", "", ":7:7: the number 12 is written into the text"),
        ("Cut {{ areas.grove }}.", "", ":7:1: the job has no 'grove' here"),
        ("See {{ ref('common.none') }}.", "", ":7:1: there is no clause 'common.none'"),
        ("Text.", "expresses: [residue.ph]\n", ":6:1: 'residue.ph' stands under 'expresses'"),
        ("Text.", "ordre: 3\n", ":6:1: 'ordre' is not a key of a clause"),
    ],
)
def test_faults_of_a_folder_are_located(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], body: str, front: str, says: str
) -> None:
    path = tmp_path / "common" / "extra.md"
    path.parent.mkdir()
    head = "id: common.extra\ntitle: Extra\npart: construction\norder: 15\n"
    path.write_text(f"---\n{head}{front}---\n{body}\n", "utf-8")

    assert outcome(["clauses", "--check", "--clauses", str(tmp_path)]) == exit_codes.FOUND

    assert f"{path}{says}" in capsys.readouterr().out


def test_numbers_that_are_names_or_come_from_the_job_are_no_fault(tmp_path: Path) -> None:
    path = tmp_path / "common" / "extra.md"
    path.parent.mkdir()
    body = "1. Comply with 29 CFR 1926.1153(c)(1).\n1. Test by ASTM E965 or AASHTO R 54.\n"
    path.write_text(
        "---\nid: common.extra\ntitle: Extra\npart: construction\norder: 15\n"
        "fixed:\n  days: {value: 12 days, document: memory}\n---\n"
        f"{body}1. Wait {{{{ fixed.days }}}}.\n",
        "utf-8",
    )

    assert outcome(["clauses", "--check", "--clauses", str(tmp_path)]) == exit_codes.OK


@pytest.mark.parametrize(
    ("arguments", "says"),
    [
        (["--check", str(CLEAN)], "leave one of them out"),
        (["--clauses", "nowhere"], "not a folder of clauses"),
    ],
)
def test_a_wrong_call_is_refused(
    arguments: list[str], says: str, capsys: pytest.CaptureFixture[str]
) -> None:
    assert outcome(["clauses", *arguments]) == exit_codes.USAGE
    assert says in capsys.readouterr().err


def test_a_folder_with_faults_lists_nothing(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    (tmp_path / "common").mkdir()
    (tmp_path / "common" / "one.md").write_text("No front.", "utf-8")
    job = tmp_path / "job.yaml"
    job.write_text(text_of("diamond_grinding"), "utf-8")

    assert outcome(["clauses", str(job), "--clauses", str(tmp_path)]) == exit_codes.USAGE
    assert "no front matter" in capsys.readouterr().err
