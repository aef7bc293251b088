"""One change at one place of a clean job: its cause is reported, and nothing that only follows.

``one_place_changes.yaml`` holds the changes for a person to read; most were chosen before it was
known which check would find them.
"""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest
import yaml

from specwriter.workflow import check
from tests.support import patched, text_of

FAMILIES: dict[str, list[dict[str, Any]]] = yaml.load(
    Path(__file__).with_name("one_place_changes.yaml").read_text("utf-8"), yaml.BaseLoader
)
CHANGES = [pytest.param(each, id=each["change"]) for some in FAMILIES.values() for each in some]


def as_read(written: Any) -> Any:
    """The value as job files read it: nothing but null and booleans has a type."""
    if isinstance(written, dict):
        return {key: as_read(each) for key, each in written.items()}
    if isinstance(written, list):
        return [as_read(each) for each in written]
    return {"null": None, "true": True, "false": False}.get(written, written)


@pytest.mark.parametrize("case", CHANGES)
def test_a_change_at_one_place_is_reported_by_its_cause_alone(
    case: dict[str, Any], tmp_path: Path
) -> None:
    path = tmp_path / "job.yaml"
    path.write_text(
        patched(text_of(case["job"]), {case["at"]: as_read(case["to"])}), encoding="utf-8"
    )

    result = check(path)

    assert result.source.faults == ()
    assert result.defects == ()
    found = {finding.slug: finding.grade.value for finding in result.findings}
    assert found == case["found"], [f"{each.slug}: {each.says}" for each in result.findings]


def test_the_changes_reach_every_family_and_texture() -> None:
    cases = [each for some in FAMILIES.values() for each in some]
    places = {(each["job"], each["at"], str(each["to"])) for each in cases}

    assert len(places) == len(cases) >= 270
    assert all(len(some) >= 15 for some in FAMILIES.values())
    textures = {text_of(each["job"]).partition("texture: ")[2].split()[0] for each in cases}
    assert len(textures) == 5


def test_few_changes_are_told_in_more_than_one_finding() -> None:
    """Two findings stand only where one fact opens two questions, or one text has two faults."""
    several = [each for some in FAMILIES.values() for each in some if len(each["found"]) > 1]

    assert len(several) <= 10
    assert max(len(each["found"]) for each in several) == 2
