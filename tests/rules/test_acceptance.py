"""An accepted finding stays visible and ends with what it was given for."""

from __future__ import annotations

from typing import Any

import pytest

from specwriter.rules import all_rules, run_rules
from specwriter.rules.acceptance import Settlement, settle
from tests.support import job

RIDE = "areas.mainline.smoothness"
ENTRY = {
    "finding": "index-instrument",
    "at": f"{RIDE}.instrument",
    "because": "the agency owns no profiler before the next season",
    "by": "pavement engineer",
    "on": "2027-02-01",
}
KNOWN = [rule.slug for rule in all_rules()]


def settled(**changes: Any) -> Settlement:
    built = job(
        "complete/diamond_grinding",
        {
            "project.date": "2027-04-01",
            f"{RIDE}.instrument": "profilograph",
            f"{RIDE}.sensor": None,
            f"{RIDE}.sensor_width": None,
            "accepted": [{**ENTRY, **changes}],
        },
    )
    return settle(built, run_rules(built).found, KNOWN)


@pytest.mark.parametrize(
    "changes",
    [
        pytest.param({}, id="the value"),
        pytest.param({"at": "areas.mainline"}, id="the whole area"),
        pytest.param({"for": "profilograph"}, id="the wording it was given for"),
        pytest.param({"until": "2027-04-01"}, id="its last day"),
    ],
)
def test_an_acceptance_covers(changes: dict[str, str]) -> None:
    result = settled(**changes)

    assert result.complaints == ()
    assert [each.finding.slug for each in result.accepted] == ["index-instrument"]


@pytest.mark.parametrize(
    ("changes", "at", "says"),
    [
        pytest.param({"finding": "index-instrumnt"}, "finding", "index-instrumnt", id="misspelt"),
        pytest.param({"at": f"{RIDE}.sensor"}, "at", "no finding", id="matches nothing"),
        pytest.param({"until": "2027-03-31"}, "until", "2027-03-31", id="past its day"),
        pytest.param({"for": "straightedge"}, "for", "straightedge", id="the value has changed"),
    ],
)
def test_an_acceptance_that_covers_nothing_is_a_finding(
    changes: dict[str, str], at: str, says: str
) -> None:
    result = settled(**changes)

    assert result.accepted == ()
    (complaint,) = result.complaints
    assert complaint.slug == "acceptance"
    assert complaint.path == f"accepted.0.{at}"
    assert says in complaint.says
    assert complaint.settle
