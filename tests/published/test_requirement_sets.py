"""Requirement sets that agencies printed: silent where sound, found where they clash.

Outside check: the sets in ``requirement_sets.yaml``, each with document, section and year.
"""

from __future__ import annotations

import re
from decimal import Decimal
from fractions import Fraction
from pathlib import Path
from typing import Any

import pytest
import yaml

from specwriter.diagnostic import Grade
from specwriter.report.result import CheckResult
from specwriter.workflow import check

SETS: list[dict[str, Any]] = yaml.safe_load(
    (Path(__file__).parent / "requirement_sets.yaml").read_text(encoding="utf-8")
)
READ = [entry for entry in SETS if "refused" not in entry]
PROJECT = {"title": "Published set", "agency": "Test"}
BESIDE = ("conditions", "pay_items", "sequence", "residue")
KEYS = {"id", "document", "tag", "why", "area", "base_section", *BESIDE} | {
    *("conflict", "caution", "found", "silent", "refused", "left_out")
}


def checked(entry: dict[str, Any], folder: Path) -> CheckResult:
    """The set as a job file, read and checked."""
    project = PROJECT | {key: entry[key] for key in ("base_section",) if key in entry}
    job = {"format": 1, "project": project, "areas": {"printed": entry["area"]}}
    job |= {key: entry[key] for key in BESIDE if key in entry}
    path = folder / "job.yaml"
    path.write_text(yaml.safe_dump(job, allow_unicode=True), encoding="utf-8")
    return check(path)


@pytest.mark.parametrize("entry", READ, ids=lambda entry: entry["id"])
def test_a_published_set_raises_exactly_its_known_faults(
    entry: dict[str, Any], tmp_path: Path
) -> None:
    result = checked(entry, tmp_path)

    assert result.source.faults == ()
    for grade in (Grade.CONFLICT, Grade.CAUTION):
        found = [finding.slug for finding in result.findings if finding.grade is grade]
        assert sorted(found) == entry.get(grade.value, [])
    slugs = {finding.slug for finding in result.findings}
    assert slugs >= set(entry.get("found", []))
    assert not slugs & set(entry.get("silent", []))


@pytest.mark.parametrize(
    "entry", [each for each in SETS if "refused" in each], ids=lambda entry: entry["id"]
)
def test_a_print_that_lost_its_numbers_is_refused(entry: dict[str, Any], tmp_path: Path) -> None:
    faults = checked(entry, tmp_path).source.faults

    assert faults
    assert all(entry["refused"] in f"{fault.says} {fault.todo}" for fault in faults)


def test_every_set_names_its_document_and_how_far_to_trust_it() -> None:
    assert {entry["tag"] for entry in SETS} == {"seen", "second-hand", "memory"}
    assert all(entry["document"] for entry in SETS)
    assert all("memory" in entry["document"] for entry in SETS if entry["tag"] == "memory")
    assert all(set(entry) <= KEYS for entry in SETS)


def test_every_known_fault_says_why_it_is_one() -> None:
    faulty = [each for each in SETS if {"conflict", "caution", "refused"} & set(each)]

    assert len(faulty) >= 20
    assert all(entry["why"] for entry in faulty)


def slugs(result: CheckResult) -> set[str]:
    """The conflicts and cautions of a result."""
    weighty = (Grade.CONFLICT, Grade.CAUTION)
    return {each.slug for each in result.findings if each.grade in weighty}


@pytest.mark.parametrize("entry", READ, ids=lambda entry: entry["id"])
def test_a_set_in_two_areas_has_the_faults_of_the_set_in_one(
    entry: dict[str, Any], tmp_path: Path
) -> None:
    once = checked(entry, tmp_path)
    job = yaml.safe_load((tmp_path / "job.yaml").read_text("utf-8"))
    job["areas"]["beside"] = {each: was for each, was in entry["area"].items() if each != "limits"}
    (tmp_path / "job.yaml").write_text(yaml.safe_dump(job, allow_unicode=True), "utf-8")
    twice = check(tmp_path / "job.yaml")

    assert slugs(twice) - slugs(once) == set()
    assert slugs(once) - slugs(twice) == set()


LENGTH = re.compile(r"(?<![\w./])(?<!\d-)(?:(\d+)-)?(\d+(?:/\d+)?|\d*\.\d+) (in|ft)\b(?!/)")
METRIC = {"in": (Fraction("25.4"), "mm"), "ft": (Fraction("0.3048"), "m")}


def in_metric(value: Any) -> Any:
    """Every length of inches or feet in a set as the same length in millimetres or metres."""
    if isinstance(value, dict):
        return {key: in_metric(each) for key, each in value.items()}
    if isinstance(value, list):
        return [in_metric(each) for each in value]
    return LENGTH.sub(_metric, value) if isinstance(value, str) else value


def _metric(found: re.Match[str]) -> str:
    factor, unit = METRIC[found[3]]
    length = (int(found[1] or 0) + Fraction(found[2])) * factor
    return f"{Decimal(length.numerator) / Decimal(length.denominator)} {unit}"


CONVERTIBLE = [
    entry
    for entry in READ
    if "also_stated" not in entry["area"] and in_metric(entry["area"]) != entry["area"]
]


@pytest.mark.parametrize("entry", CONVERTIBLE, ids=lambda entry: entry["id"])
def test_a_set_in_the_other_units_has_the_same_faults(
    entry: dict[str, Any], tmp_path: Path
) -> None:
    parts = ("area", "conditions")
    other = entry | {key: in_metric(entry[key]) for key in parts if key in entry}

    assert slugs(checked(other, tmp_path)) == slugs(checked(entry, tmp_path))
