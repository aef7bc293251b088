"""Every example gives the documents that stand beside it, byte for byte."""

from __future__ import annotations

from pathlib import Path

import pytest

from specwriter.report.worksheet_text import worksheet_text
from specwriter.workflow import check, draft, worksheet
from tests.support import EXAMPLES

NAMES = sorted(path.name for path in EXAMPLES.iterdir() if path.is_dir())
FORMATS = ("md", "html", "docx")


@pytest.mark.parametrize("name", NAMES)
@pytest.mark.parametrize("form", FORMATS)
def test_an_example_gives_the_document_beside_it(
    name: str, form: str, request: pytest.FixtureRequest, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(EXAMPLES / name)
    document = Path(f"provision.{form}")

    made = draft(check(Path("job.yaml")), (form,)).contents[form]

    if request.config.getoption("--update-golden"):
        document.write_bytes(made)
    assert document.read_bytes() == made


@pytest.mark.parametrize("name", NAMES)
def test_an_example_gives_the_worksheet_beside_it(
    name: str, request: pytest.FixtureRequest, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(EXAMPLES / name)
    beside = Path("worksheet.txt")

    made = worksheet_text(worksheet(Path("job.yaml")))

    if request.config.getoption("--update-golden"):
        beside.write_text(made, encoding="utf-8")
    assert beside.read_text("utf-8") == made


def test_there_is_a_clean_job_of_each_drafted_texture_and_one_full_of_conflicts() -> None:
    findings = {name: check(EXAMPLES / name / "job.yaml").findings for name in NAMES}

    assert {name for name, found in findings.items() if not found} == {*NAMES} - {"as-received"}
    assert len(findings["as-received"]) >= 4
