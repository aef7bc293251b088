"""Registers say what the document says, and add the numbers that follow from it."""

from __future__ import annotations

import csv
import io
import json
from pathlib import Path

import pytest

from specwriter.cli import exit_codes
from specwriter.cli.main import outcome
from specwriter.report.registers import Register, registers_csv
from specwriter.workflow import check, draft, registers
from tests.support import EXAMPLES, SUPPORT, patched, text_of

NAMES = (
    "requirements",
    "submittals",
    "tests",
    "pay_items",
    "references",
    "open_decisions",
    "accepted_findings",
)

JOBS = (*sorted(EXAMPLES.glob("*/job.yaml")), *sorted((SUPPORT / "complete").glob("*.yaml")))


def made(path: Path) -> dict[str, list[dict[str, str]]]:
    """The registers of a job file, read back from their CSV files."""
    checked = check(path)
    files = registers(checked, draft(checked, ()).document)
    read = {
        name: list(csv.DictReader(io.StringIO(files[f".{name}.csv"].decode("utf-8-sig"))))
        for name in NAMES
    }
    assert json.loads(files[".registers.json"])["registers"] == read
    return read


URBAN = made(EXAMPLES / "urban-grinding" / "job.yaml")


def test_every_tested_property_has_all_its_cells() -> None:
    rows = {row["requirement"]: row for row in URBAN["requirements"]}

    assert rows["Match at joints"] == {
        "area": "Quarry Street travel lanes",
        "requirement": "Match at joints",
        "limit": "at most 1/16 in (1.6 mm)",
        "test": "10 ft straightedge across the joint",
        "where": "every tenth joint in each lane",
        "when": "in the shift in which the lane is ground",
        "lot": "each 528 ft of lane",
        "how many": "4",
        "by": "contractor",
        "statistic": "each reading",
        "remedy": "regrind within the depth limit",
        "retest": "the same joints",
        "pay": "none",
        "key of the job": "areas.mainline.testing.joint_match",
    }


def test_tests_are_counted_from_lots_and_lanes() -> None:
    rows = {row["test"]: row for row in URBAN["tests"]}

    # Two roadways of two lanes, 5,280 ft each: ten lots of 528 ft a lane, four readings a lot.
    assert (rows["Match at joints"]["lots"], rows["Match at joints"]["readings"]) == ("40", "160")
    assert rows["Coverage"]["lots"] == "not counted"
    assert rows["Coverage"]["remark"] == "a lot of 'each shift' has no length or area"


@pytest.mark.parametrize("path", JOBS, ids=lambda path: f"{path.parent.name}/{path.stem}")
def test_no_cell_is_empty(path: Path) -> None:
    rows = [row for register in made(path).values() for row in register]

    assert [row for row in rows if not all(cell.strip() for cell in row.values())] == []


def test_a_submittal_for_information_has_no_answer() -> None:
    rows = {row["submittal"]: row["answer within"] for row in URBAN["submittals"]}

    assert rows["equipment"] == "7 days"
    assert rows["profiler"] == "for information, no answer"


def test_pay_items_carry_quantity_inclusions_and_what_they_pay_for() -> None:
    (row,) = URBAN["pay_items"]

    assert row["quantity"].startswith("28,160 SY")
    assert row["excludes"] == "traffic control; slab repairs; joint resealing; pavement marking"
    assert row["pays for"] == "Quarry Street travel lanes; residue"


def test_references_carry_their_editions(tmp_path: Path) -> None:
    path = tmp_path / "job.yaml"
    key = "areas.mainline.testing.texture.where"
    path.write_text(patched(text_of("urban-grinding"), {key: "places by ASTM D3665"}), "utf-8")

    cited = {(row["document"], row["edition"]) for row in made(path)["references"]}

    assert ("AASHTO R 54", "2014 (2018)") in cited
    assert ("ASTM D3665", "not stated") in cited
    assert {document for document, _ in cited} >= {"29 CFR 1926.1153", "40 CFR 261.22"}
    assert not any("straightedge" in document for document, _ in cited)


def test_open_decisions_and_accepted_findings_are_listed(tmp_path: Path) -> None:
    path = tmp_path / "job.yaml"
    accepted = {
        "finding": "groove-land-spacing",
        "at": "areas.mainline.groove.spacing",
        "because": "the blade set is fixed",
        "by": "project engineer",
        "on": "2027-04-22",
    }
    patches = {
        "areas.mainline.groove": {"width": "1/8 in", "depth": "1/8 in", "spacing": "1 in"},
        "areas.mainline.land.width": "1/2 in",
        "accepted": [accepted],
    }
    path.write_text(patched(text_of("longitudinal_grooving"), patches), "utf-8")

    rows = made(path)

    assert {row["key of the job"] for row in rows["open_decisions"]} >= {"project.contract"}
    (row,) = rows["accepted_findings"]
    assert row["because"] == "the blade set is fixed"
    assert row["grade"] == "conflict"


@pytest.mark.parametrize(
    ("cell", "written"),
    [("=1+1", "'=1+1"), ("@x", "'@x"), ("1/8 in ± 1/64 in", "1/8 in ± 1/64 in"), ("–", "–")],
)
def test_no_cell_acts_as_a_formula(cell: str, written: str) -> None:
    content = registers_csv(Register(name="x", columns=("a",), rows=((cell,),)))

    assert content.decode("utf-8-sig").splitlines() == ["a", written]


def test_the_command_line_writes_them_beside_the_document(tmp_path: Path) -> None:
    path = tmp_path / "provision.md"
    job = EXAMPLES / "rural-grooving" / "job.yaml"

    assert outcome(["draft", str(job), "--to", str(path), "--registers"]) == exit_codes.OK

    written = {each.name for each in tmp_path.iterdir()}
    expected = {f"provision.{name}.csv" for name in NAMES}
    assert written == expected | {"provision.md", "provision.registers.json"}
