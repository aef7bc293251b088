"""Outside checks of the pay rules: tables and schedules that agencies printed.

``pay_tables.yaml``: tables of agencies as a third party compiled them, undated, second-hand.
Maine DOT section 401, compiled by a third party, undated (second-hand): 1.05 at 35.00 in/mi, 1.00
at 60.00, 0.75 at 80.00, straight between, rejected above; the metric column ends at 1.26 m/km.
Texas DOT item 585, schedules 1 to 3: from memory, unverified; sums for each 0.1 mi.
"""

from __future__ import annotations

from fractions import Fraction
from itertools import pairwise
from pathlib import Path
from typing import Any

import pytest
import yaml

from specwriter.diagnostic import Finding, Grade
from specwriter.quantity import parse
from specwriter.rules import all_rules, run_rules
from specwriter.rules.pay_schedule._table import Table, tables
from specwriter.trade.pay_schedule import pay_at, rounded, steps
from tests.support import job

RIDE = "areas.mainline.smoothness"
TABLES: list[dict[str, Any]] = yaml.load(
    (Path(__file__).parent / "pay_tables.yaml").read_text(encoding="utf-8"), yaml.BaseLoader
)
PAY_RULES = [rule for rule in all_rules() if rule.topic == "pay_schedule"]
CLASSES = ({"pay": "103 percent"}, {"pay": "100 percent"}, {"pay": "95 percent"})
"""Sums that stand for bonus, full pay and deduction, which the compilation does not print."""


def as_ride(entry: dict[str, Any], **more: str) -> dict[str, Any]:
    """A printed table as the ride requirement of an area."""
    rest = [{"action": "correct the segment"}]
    bands = [
        {"index": _index(row, entry["unit"]), **what}
        for row, what in zip(entry["rows"], [*CLASSES, *rest], strict=True)
        if row != "null"
    ]
    band = {key: entry[key] for key in ("blanking_band",) if key in entry}
    pay = {"schedule": "table", "bands": bands}
    return {"index": entry["index"], **band, **more, "pay_adjustment": pay}


def _index(row: list[str], unit: str) -> str:
    low, high = row
    return f"at least {low} {unit}" if high == "null" else f"{low} {unit} to {high} {unit}"


def found(ride: dict[str, Any], **more: Any) -> tuple[Finding, ...]:
    built = job("diamond_grinding", {RIDE: ride, **more})
    report = run_rules(built, PAY_RULES)
    assert report.defects == ()
    return report.findings


@pytest.mark.parametrize("entry", TABLES, ids=lambda entry: entry["table"])
def test_a_printed_table_raises_exactly_its_known_faults(entry: dict[str, Any]) -> None:
    findings = found(as_ride(entry))

    expected = entry.get("found", {})
    assert sorted(each.slug for each in findings) == sorted(expected)
    for finding in findings:
        for words in expected[finding.slug]:
            assert words in finding.says


@pytest.mark.parametrize("entry", TABLES, ids=lambda entry: entry["table"])
def test_a_table_without_a_known_fault_raises_no_conflict_of_any_kind(
    entry: dict[str, Any],
) -> None:
    if "found" in entry:
        return
    report = run_rules(job("diamond_grinding", {RIDE: as_ride(entry)}))

    assert [each.slug for each in report.findings if each.grade is Grade.CONFLICT] == []


@pytest.mark.parametrize("name", ["Kentucky", "Arizona, asphalt"])
def test_whole_number_rows_leave_gaps_when_tenths_are_reported(name: str) -> None:
    (entry,) = [each for each in TABLES if each["table"] == name]

    tenths = found(as_ride(entry, reported_to="0.1 in/mi"))
    whole = found(as_ride(entry, reported_to="1 in/mi"))

    gaps = [each for each in tenths if each.slug == "pay-rows-leave-a-gap"]
    assert len(gaps) == 3
    assert [each.slug for each in whole if each.grade is not Grade.NOTE] == []


def test_every_row_of_the_compilation_is_entered() -> None:
    assert len(TABLES) == 30
    assert {entry["unit"] for entry in TABLES} == {"in/mi", "m/km"}


MAINE = {
    "index": "IRI",
    "pay_adjustment": {
        "schedule": "table",
        "bands": [
            {"index": "at most 35.00 in/mi", "pay": "105 percent"},
            {"index": "35.00 in/mi to 60.00 in/mi", "pay": "100 percent to 105 percent"},
            {"index": "60.00 in/mi to 80.00 in/mi", "pay": "75 percent to 100 percent"},
            {"index": "at least 80.01 in/mi", "action": "remove and replace"},
        ],
    },
}
MAINE_METRIC = {
    "bands": [
        {"index": "at most 0.552 m/km", "pay": "105 percent"},
        {"index": "0.552 m/km to 0.947 m/km", "pay": "100 percent to 105 percent"},
        {"index": "0.947 m/km to 1.260 m/km", "pay": "75 percent to 100 percent"},
        {"index": "at least 1.261 m/km", "action": "remove and replace"},
    ]
}


def table(ride: dict[str, Any]) -> Table:
    return next(tables(job("diamond_grinding", {RIDE: ride})))


def in_per_mi(text: str) -> Fraction:
    return parse(f"{text} in/mi").interval.low or Fraction(0)


@pytest.mark.parametrize(
    ("index", "factor"),
    [("20", "1.05"), ("35.00", "1.05"), ("47.5", "1.025"), ("60.00", "1.00"), ("80.00", "0.75")],
)
def test_a_schedule_of_straight_lines_pays_what_is_printed(index: str, factor: str) -> None:
    assert pay_at(table(MAINE).rows, in_per_mi(index)) == Fraction(factor) - 1


def test_a_schedule_of_straight_lines_has_no_fault_and_no_step() -> None:
    assert found(MAINE) == ()
    assert {step.change for step in steps(table(MAINE).rows)} == {Fraction(0)}
    assert pay_at(table(MAINE).rows, in_per_mi("80.01")) is None


def test_the_metric_column_that_rejects_earlier_is_found_at_its_row() -> None:
    (finding,) = found(
        MAINE,
        **{
            "areas.mainline.also_stated": [
                {"in": "metric column", "smoothness": {"pay_adjustment": MAINE_METRIC}}
            ]
        },
    )

    assert finding.slug == "pay-stated-twice"
    assert finding.path.endswith("bands.2.index")
    assert "80 in/mi" in finding.says
    assert "79.83 in/mi" in finding.says


def texas(*rows: tuple[str, str]) -> dict[str, Any]:
    bands = [{"index": index, "pay": pay} for index, pay in rows]
    return {"index": "IRI", "reported_to": "1 in/mi", "pay_adjustment": {"bands": bands}}


TEXAS = {
    1: texas(
        ("at most 30 in/mi", "$600"),
        ("30 in/mi to 60 in/mi", "$0 to $600"),
        ("61 in/mi to 65 in/mi", "$0"),
        ("66 in/mi to 95 in/mi", "-$600 to -$20"),
    ),
    2: texas(
        ("at most 30 in/mi", "$600"),
        ("30 in/mi to 60 in/mi", "$0 to $600"),
        ("61 in/mi to 75 in/mi", "$0"),
        ("76 in/mi to 95 in/mi", "-$400 to -$20"),
    ),
    3: texas(
        ("at most 30 in/mi", "$300"),
        ("30 in/mi to 60 in/mi", "$0 to $300"),
        ("61 in/mi to 95 in/mi", "$0"),
    ),
}


@pytest.mark.parametrize(
    ("schedule", "sums"),
    [
        (1, {"30": 600, "45": 300, "60": 0, "61": 0, "65": 0, "66": -20, "95": -600}),
        (2, {"30": 600, "60": 0, "75": 0, "76": -20, "95": -400}),
        (3, {"30": 300, "45": 150, "60": 0, "90": 0}),
    ],
)
def test_sums_for_each_tenth_of_a_mile_are_those_recalled(
    schedule: int, sums: dict[str, int]
) -> None:
    rows = table(TEXAS[schedule]).rows

    assert {index: pay_at(rows, in_per_mi(index)) for index in sums} == sums


@pytest.mark.parametrize("schedule", TEXAS)
def test_a_schedule_never_pays_more_for_a_rougher_segment(schedule: int) -> None:
    rows, step = table(TEXAS[schedule]).rows, in_per_mi("1")
    paid = [pay_at(rows, index * step) for index in range(96)]

    sums = [each for each in paid if each is not None]
    assert len(sums) == 96
    assert all(before >= after for before, after in pairwise(sums))


def test_a_result_between_whole_numbers_is_paid_once_it_is_rounded() -> None:
    rows, step = table(TEXAS[1]).rows, in_per_mi("1")

    assert pay_at(rows, in_per_mi("65.5")) is None
    assert pay_at(rows, rounded(in_per_mi("65.5"), step)) == -20
    assert pay_at(rows, rounded(in_per_mi("65.4"), step)) == 0
