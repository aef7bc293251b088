"""Requirement sets that agencies printed: silent where sound, a conflict where they clash.

Outside check: the sets in ``requirement_sets.yaml``, each with document, section and year.
"""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest
import yaml

from specwriter.diagnostic import Grade
from specwriter.workflow import check

SETS: list[dict[str, Any]] = yaml.safe_load(
    (Path(__file__).parent / "requirement_sets.yaml").read_text(encoding="utf-8")
)
PROJECT = {"title": "Published set", "agency": "Test"}


@pytest.mark.parametrize("entry", SETS, ids=lambda entry: entry["id"])
def test_a_published_set_raises_exactly_its_known_conflicts(
    entry: dict[str, Any], tmp_path: Path
) -> None:
    job = {"format": 1, "project": PROJECT, "areas": {"printed": entry["area"]}}
    path = tmp_path / "job.yaml"
    path.write_text(yaml.safe_dump(job, allow_unicode=True), encoding="utf-8")

    result = check(path)

    assert result.source.faults == ()
    found = [finding for finding in result.findings if finding.grade is Grade.CONFLICT]
    assert [finding.slug for finding in found] == entry.get("conflict", [])


def test_every_set_names_its_document_and_how_far_to_trust_it() -> None:
    assert {entry["tag"] for entry in SETS} == {"seen", "second-hand", "memory"}
    assert all(entry["document"] for entry in SETS)
    assert all("memory" in entry["document"] for entry in SETS if entry["tag"] == "memory")
