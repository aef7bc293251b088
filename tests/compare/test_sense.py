"""One changed value at a time: which way it goes, who bears it, and what is said about it."""

from __future__ import annotations

from pathlib import Path
from typing import Any, NamedTuple

import pytest
import yaml

from specwriter.compare import Change, Sense, compare
from tests.compare import edition


class Case(NamedTuple):
    name: str
    job: str
    at: str
    old: Any
    new: Any
    sense: str
    bears: str
    says: str = ""
    warns: str = ""


TABLE = yaml.safe_load((Path(__file__).parent / "sense.yaml").read_text("utf-8"))
CASES = [Case(name=name, **row) for name, row in TABLE.items()]


def only_change(case: Case) -> Change:
    old = edition(case.job, {case.at: case.old})
    new = edition(case.job, {case.at: case.new})
    changes = compare(old, new).changes
    assert len(changes) == 1, [change.label for change in changes]
    return changes[0]


@pytest.mark.parametrize("case", CASES, ids=lambda case: case.name)
def test_a_change_has_its_sense_its_bearer_and_its_words(case: Case) -> None:
    change = only_change(case)

    found = (change.sense.value, change.bears, change.difference, change.warning)
    assert found == (case.sense, case.bears, case.says, case.warns)
    assert change.because
    assert change.source == "common practice, no source"


@pytest.mark.parametrize("case", CASES, ids=lambda case: case.name)
def test_the_same_change_read_backwards_has_the_mirrored_sense(case: Case) -> None:
    forth = only_change(case)
    back = only_change(case._replace(old=case.new, new=case.old))

    assert back.sense is forth.sense.mirrored
    assert (back.old, back.new, back.label) == (forth.new, forth.old, forth.label)


def test_more_readings_by_the_agency_are_its_own_burden() -> None:
    tester = {"areas.mainline.testing.groove_width.by": "agency"}
    readings = "areas.mainline.testing.groove_width.readings"
    old, new = (edition("rural-grooving", {**tester, readings: count}) for count in (5, 10))

    (change,) = compare(old, new).changes

    assert (change.sense, change.bears) == (Sense.TIGHTER, "agency")
