"""One fault in a sound job: found, at the right place, in plain words, and nothing else said.

A small job leaves most things open; what it leaves open is not counted.
"""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest
import yaml

from specwriter.diagnostic import Grade
from specwriter.rules import all_rules
from specwriter.workflow import check
from tests.support import EXAMPLES, TEXTURES, patched, text_of

CASES: list[dict[str, Any]] = yaml.safe_load(
    (Path(__file__).parent / "seeded_faults.yaml").read_text(encoding="utf-8")
)
GAPS = {rule.slug for rule in all_rules() if rule.rule.gap}
COMPLETE = [*(f"complete/{texture}" for texture in TEXTURES), "urban-grinding", "rural-grooving"]


def findings(text: str, folder: Path) -> list[Any]:
    path = folder / "job.yaml"
    path.write_text(text, encoding="utf-8")
    result = check(path)
    assert result.source.faults == ()
    return [finding for finding in result.findings if finding.grade is not Grade.NOTE]


@pytest.mark.parametrize("case", CASES, ids=lambda case: case["fault"])
def test_a_seeded_fault_is_the_only_finding(case: dict[str, Any], tmp_path: Path) -> None:
    found = findings(patched(text_of(case["job"]), case["set"]), tmp_path)
    if case["job"] in TEXTURES:
        found = [finding for finding in found if finding.slug not in GAPS]

    assert len(found) == 1, [f"{finding.slug}: {finding.says}" for finding in found]
    (finding,) = found
    assert finding.grade.value == case["grade"]
    assert {place.path for place in finding.evidence} >= set(case["at"])
    for words in case.get("says", []):
        assert words in finding.says
    assert finding.settle


@pytest.mark.parametrize("name", COMPLETE)
def test_a_complete_job_stays_silent(name: str, tmp_path: Path) -> None:
    assert findings(text_of(name), tmp_path) == []


@pytest.mark.parametrize("name", TEXTURES)
def test_a_small_job_holds_together_and_only_leaves_things_open(name: str, tmp_path: Path) -> None:
    found = findings(text_of(name), tmp_path)

    assert {finding.grade for finding in found} == {Grade.OPEN}
    assert {finding.slug for finding in found} <= GAPS


def test_the_job_as_received_is_full_of_findings(tmp_path: Path) -> None:
    found = check(EXAMPLES / "as-received" / "job.yaml").findings

    assert sum(finding.grade is Grade.CONFLICT for finding in found) >= 4
