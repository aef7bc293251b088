"""Clean jobs stay quiet: no conflict, nothing open, and hardly a caution.

The jobs are those of ``examples/`` but for the one that shows what is found, the complete job of
each texture, and the clean ones: contracts in the habits of other agencies (metric, a house style,
a pay table, a deck without its margins, an airport in use, a short and slow ramp).
"""

from __future__ import annotations

from collections import Counter
from pathlib import Path
from typing import Any

import pytest
import yaml

from specwriter.diagnostic import Grade
from specwriter.workflow import check
from tests.support import EXAMPLES, SUPPORT, patched, text_of

VARIANTS: list[dict[str, Any]] = yaml.safe_load(
    Path(__file__).with_name("sound_variants.yaml").read_text("utf-8")
)


def _jobs(folder: str) -> list[Path]:
    return sorted((SUPPORT / folder).glob("*.yaml"))


CLEAN = [
    *(f"{folder}/{path.stem}" for folder in ("complete", "clean") for path in _jobs(folder)),
    *sorted(path.name for path in EXAMPLES.iterdir() if path.name != "as-received"),
]


@pytest.mark.parametrize("name", CLEAN)
def test_a_clean_job_stays_quiet(name: str, tmp_path: Path) -> None:
    path = tmp_path / "job.yaml"
    path.write_text(text_of(name), encoding="utf-8")

    result = check(path)

    assert result.source.faults == ()
    assert result.defects == ()
    counts = Counter(finding.grade for finding in result.findings)
    said = [f"{each.slug}: {each.says}" for each in result.findings]
    assert counts[Grade.CONFLICT] == counts[Grade.OPEN] == 0, said
    assert counts[Grade.CAUTION] < 5, said
    assert counts.total() < 10, said


def test_clean_jobs_together_give_next_to_nothing(tmp_path: Path) -> None:
    path, found = tmp_path / "job.yaml", []
    for name in CLEAN:
        path.write_text(text_of(name), encoding="utf-8")
        found += [f"{name}: {each.slug}" for each in check(path).findings]

    assert len(CLEAN) >= 16
    assert len(found) <= len(CLEAN) // 4, found


@pytest.mark.parametrize("case", VARIANTS, ids=lambda case: case["variant"])
def test_a_sound_variant_of_a_clean_job_is_silent(case: dict[str, Any], tmp_path: Path) -> None:
    path = tmp_path / "job.yaml"
    path.write_text(patched(text_of(case["job"]), case["set"]), encoding="utf-8")

    result = check(path)

    assert result.source.faults == ()
    assert [f"{each.slug}: {each.says}" for each in result.findings] == []
