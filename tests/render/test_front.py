from __future__ import annotations

from dataclasses import replace

import pytest

from specwriter.render.front import front_sections, lead_in_runs, masthead
from tests.render.sample import SAMPLE


@pytest.mark.parametrize(
    ("text", "blanks"),
    [
        ("", []),
        ("Added to Section 614.", []),
        ("[base section]", ["[base section]"]),
        ("Added to [section], [year].", ["[section]", "[year]"]),
        ("Open [ only", []),
    ],
)
def test_what_stands_in_brackets_in_the_lead_in_is_a_blank(text: str, blanks: list[str]) -> None:
    runs = lead_in_runs(replace(SAMPLE, lead_in=text))
    assert "".join(run.text for run in runs) == text
    assert [run.text for run in runs if run.kind == "blank"] == blanks


def test_a_section_with_nothing_to_say_is_left_out() -> None:
    titles = [section.title for section in front_sections(SAMPLE)]
    assert titles[:3] == ["Status", "Cautions", "Open decisions"]
    bare = replace(SAMPLE, status="", open_decisions=(), unexpressed=())
    assert [section.title for section in front_sections(bare)] == ["Cautions"]


@pytest.mark.parametrize(("clause", "target"), [("2.1", "texture-dimensions"), ("lead-in", "")])
def test_an_open_decision_leads_to_its_clause_when_it_has_one(clause: str, target: str) -> None:
    (decision,) = SAMPLE.open_decisions
    open_decisions = (replace(decision, clause=clause),)
    (point,) = front_sections(replace(SAMPLE, open_decisions=open_decisions))[2].points
    assert "".join(run.text for run in point) == (
        f"groove depth: {clause} (job: areas.mainline.groove.depth)"
    )
    assert [run.target for run in point if run.kind == "reference"] == ([target] if target else [])


def test_the_masthead_leaves_out_what_the_job_does_not_give() -> None:
    lines = masthead(replace(SAMPLE, contract="", revision=""))
    assert lines == (("Provision", "SP-7"), ("Date", "2026-03-02"))
