"""An accepted finding hides no other one, and what a slip hides is named beside it.

Every fourth change of ``one_place_changes.yaml`` is accepted as it is found, again and again:
whatever was held back as a consequence has to come to light, and nothing may vanish.
"""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest

from specwriter.report.result import CheckResult
from specwriter.workflow import check
from tests.acceptance.test_one_place_changes import CHANGES, as_read
from tests.support import patched, text_of

GRINDING = "complete/diamond_grinding"
GROOVING = "complete/longitudinal_grooving"
MAINLINE = "areas.mainline"


def checked(folder: Path, base: str, patches: dict[str, Any], accepted: list[Any]) -> CheckResult:
    path = folder / "job.yaml"
    text = patched(text_of(base), {**patches, "accepted": accepted or None})
    path.write_text(text, encoding="utf-8")
    return check(path)


def accept(slug: str, at: str) -> dict[str, str]:
    return {
        "finding": slug,
        "at": at,
        "because": "a trial of the agency",
        "by": "pavement engineer",
        "on": "2027-02-01",
    }


@pytest.mark.parametrize(
    ("base", "at", "to", "slip", "behind"),
    [
        pytest.param(
            *(GRINDING, f"{MAINLINE}.joint_match", "at most 1 in", "unit-slip", "ride-not-assured"),
            id="a step of an inch at every joint",
        ),
        pytest.param(
            *(GRINDING, f"{MAINLINE}.smoothness.limit", "at most 12 in/mi", "index-unit"),
            "improvement-beyond-what-is-published",
            id="a ride that grinding has never given",
        ),
        pytest.param(
            *(GROOVING, f"{MAINLINE}.groove.depth", "1-1/2 in", "unit-slip"),
            "dimension-without-tolerance",
            id="a depth without tolerance",
        ),
    ],
)
def test_what_waits_behind_a_slip_is_named_and_told_when_the_slip_is_accepted(
    base: str, at: str, to: str, slip: str, behind: str, tmp_path: Path
) -> None:
    (before,) = checked(tmp_path, base, {at: to}, []).findings

    after = checked(tmp_path, base, {at: to}, [accept(slip, at)])

    assert before.slug == slip
    assert behind in before.says
    assert [each.finding.slug for each in after.accepted] == [slip]
    assert behind in {each.slug for each in after.findings}
    assert all("Told when" not in each.finding.says for each in after.accepted)


def test_an_acceptance_holds_while_a_slip_stands_before_what_it_covers(tmp_path: Path) -> None:
    """The step was accepted with the ride; a later slip of the step does not undo that."""
    covered = accept("ride-not-assured", f"{MAINLINE}.joint_match")

    result = checked(tmp_path, GRINDING, {f"{MAINLINE}.joint_match": "at most 1 in"}, [covered])

    assert [each.slug for each in result.findings] == ["unit-slip"]
    assert "Told when" not in result.findings[0].says
    assert [each.finding.slug for each in result.accepted] == ["ride-not-assured"]


@pytest.mark.parametrize("case", CHANGES[::4])
def test_accepting_each_finding_in_turn_loses_none(case: dict[str, Any], tmp_path: Path) -> None:
    patches, entries = {case["at"]: as_read(case["to"])}, []
    result = checked(tmp_path, case["job"], patches, entries)
    while result.findings and len(entries) < 12:
        seen = {each.finding.slug for each in result.accepted}
        promised = {each.slug for each in result.findings}
        entries += [accept(each.slug, each.path) for each in result.findings]
        result = checked(tmp_path, case["job"], patches, entries)
        assert seen | promised <= {each.finding.slug for each in result.accepted}

    assert result.findings == ()
