"""The memo holds every value, its reasons and calculations, and is no contract text."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import docx
import pytest

from specwriter.assemble import Document, load_library
from specwriter.assemble.document import Table
from specwriter.cli import exit_codes
from specwriter.cli.main import outcome
from specwriter.report.rationale import memo_of
from specwriter.workflow import check, draft
from specwriter.worksheet import work_out
from tests.support import EXAMPLES, patched, text_of

REASONS = [
    {
        "at": "areas.mainline.groove.depth",
        "because": "cores show little cover",
        "source": "core report, 2026",
        "by": "design engineer",
    },
    {"at": "areas.nowhere.groove", "because": "left over"},
]
ACCEPTED = {
    "finding": "groove-land-spacing",
    "at": "areas.mainline.groove.spacing",
    "because": "the blade set is fixed",
    "by": "project engineer",
    "on": "2027-04-22",
}


def memo(path: Path) -> Document:
    checked = check(path)
    assert checked.job is not None
    drafted = draft(checked, ()).document
    return memo_of(checked, drafted, load_library(), work_out(checked.job))


def written(tmp_path: Path, name: str, patches: dict[str, Any]) -> Document:
    path = tmp_path / "job.yaml"
    path.write_text(patched(text_of(name), patches), "utf-8")
    return memo(path)


def rows(made: Document) -> list[tuple[str, ...]]:
    return [
        tuple("".join(run.text for run in cell) for cell in row)
        for part in made.parts
        for clause in part.clauses
        for block in clause.blocks
        if isinstance(block, Table)
        for row in block.rows
    ]


def test_a_value_has_its_reason_its_calculations_and_its_clause(tmp_path: Path) -> None:
    made = written(tmp_path, "longitudinal_grooving", {"reasons": REASONS})
    provision = draft(check(tmp_path / "job.yaml"), ()).document
    numbers = {c.id: c.number for part in provision.parts for c in part.clauses}

    (row,) = (row for row in rows(made) if row[0] == "Groove depth")

    assert row[1] == "1/8 in to 3/16 in"
    assert row[2].startswith(
        "Cores show little cover (design engineer). Source: core report, 2026."
    )
    assert "Calculation" in row[2]
    assert row[3] == numbers["longitudinal_grooving.grooves"]


def test_a_calculation_shows_formula_inputs_and_source(tmp_path: Path) -> None:
    made = written(tmp_path, "longitudinal_grooving", {})

    (row,) = (row for row in rows(made) if row[1].startswith("kerf share"))

    assert "kerf share = groove width / spacing" in row[2]
    assert "groove width" in row[2]
    assert row[3].startswith("Geometry")


def test_who_accepted_what_stands_with_the_finding_and_beside_the_value(tmp_path: Path) -> None:
    groove = {"width": "1/8 in", "depth": "1/8 in", "spacing": "1 in"}
    patches = {"areas.mainline.groove": groove, "areas.mainline.land.width": "1/2 in"}
    made = written(tmp_path, "longitudinal_grooving", {**patches, "accepted": [ACCEPTED]})

    found = rows(made)

    assert any(row[1] == "the blade set is fixed" and "project engineer" in row[2] for row in found)
    (spacing,) = (row for row in found if row[0] == "Groove spacing")
    assert "Accepted by the project engineer" in spacing[2]


def test_a_reason_that_belongs_to_no_value_is_listed(tmp_path: Path) -> None:
    made = written(tmp_path, "longitudinal_grooving", {"reasons": REASONS})

    assert ("areas.nowhere.groove", "left over") in rows(made)


@pytest.mark.parametrize("name", ["urban-grinding", "rural-grooving", "as-received"])
def test_every_number_of_an_example_stands_in_its_memo(name: str) -> None:
    path = EXAMPLES / name / "job.yaml"
    job = check(path).job
    assert job is not None

    texts = " ".join(cell for row in rows(memo(path)) for cell in row)

    for area in job.areas.values():
        for noun in filter(None, (area.groove, area.land, area.removal, area.coverage)):
            for key in type(noun).__slots__:
                value = getattr(noun, key)
                if value is not None and key != "path" and hasattr(value, "text"):
                    assert value.text.strip() in texts, (area.id, key)


def test_the_command_line_writes_it_beside_the_provision_without_a_front_sheet(
    tmp_path: Path,
) -> None:
    job = EXAMPLES / "urban-grinding" / "job.yaml"
    arguments = ["draft", str(job), "--to", str(tmp_path), "--memo", "--format", "docx,html,md"]

    assert outcome(arguments) == exit_codes.OK

    names = {each.name for each in tmp_path.iterdir()}
    assert {"SP-614.memo.docx", "SP-614.memo.html", "SP-614.memo.md"} <= names
    styles = [
        str(p.style.name)
        for p in docx.Document(str(tmp_path / "SP-614.memo.docx")).paragraphs
        if p.style
    ]
    assert not any(style.startswith("Front") for style in styles)
    assert "NOT PART OF THE CONTRACT" in (tmp_path / "SP-614.memo.md").read_text("utf-8")


@pytest.mark.parametrize("name", sorted(path.name for path in EXAMPLES.iterdir()))
def test_no_value_is_written_as_the_program_holds_it(name: str) -> None:
    for row in rows(memo(EXAMPLES / name / "job.yaml")):
        assert not [cell for cell in row if "=" in cell and "Quantity" in cell]
        assert not [cell for cell in row if "()" in cell]


def test_tiers_of_a_test_are_said_in_words() -> None:
    (said,) = {row[1] for row in rows(memo(EXAMPLES / "runway" / "job.yaml")) if "tiers:" in row[1]}
    assert "tiers: at least 60 percent of the readings at least 1/4 in; " in said


def test_what_those_who_keep_the_surface_are_told_stands_in_the_memo_alone(tmp_path: Path) -> None:
    path = tmp_path / "job.yaml"
    told = "plow with rubber edges"
    patches = {"areas.mainline.maintenance": told}
    path.write_text(patched(text_of("longitudinal_grooving"), patches), "utf-8")

    (part,) = (each for each in memo(path).parts if each.title == "Maintenance of the surface")

    assert part.clauses[0].blocks[0].runs[0].text == told
    assert told not in draft(check(path), ("md",)).contents["md"].decode()


@pytest.mark.parametrize("name", ["as-received", "five-textures", "runway"])
def test_no_cell_is_empty_and_what_is_missing_stands_once(name: str) -> None:
    made = memo(EXAMPLES / name / "job.yaml")
    (unchecked,) = (
        block
        for part in made.parts
        for clause in part.clauses
        for block in clause.blocks
        if isinstance(block, Table) and block.header[0] == "What the job does not give"
    )

    missing = ["".join(run.text for run in row[0]) for row in unchecked.rows]

    assert [row for row in rows(made) if not all(row)] == []
    assert len(missing) == len(set(missing))
