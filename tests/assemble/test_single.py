"""A list of one item is said in the sentence above it."""

from __future__ import annotations

import pytest

from specwriter.assemble.document import ListItem
from tests.assemble import blocks, texts
from tests.outside.documents import MADE
from tests.support import job

RAMP = {
    "areas.ramp": {"texture": "longitudinal_grooving", "place": "ramp", "name": "the ramp"},
    "areas.mainline.name": "Ring Road",
}


@pytest.mark.parametrize(
    ("body", "says"),
    [
        ("Cut:\n\n1. by day.\n\nStop.", ["Cut: by day.", "Stop."]),
        ("Wet.\nCut:\n1. by day.", ["Wet. Cut: by day."]),
        ("Cut:\n\n1. by day;\n1. wet.", ["Cut:", "(a) by day;", "(b) wet."]),
        ("Cut:\n\n1. by day,\nor at night.", ["Cut:", "(a) by day, or at night."]),
        ("Cut:\n\n1. if:\n   1. wet;\n   1. dry.", ["Cut:", "(a) if:", "(i) wet;", "(ii) dry."]),
        ("Cut.\n\n1. by day.", ["Cut.", "(a) by day."]),
        (
            "On {{ areas.name | and_list }}:\n\n1. The land is dry.",
            ["On Ring Road and the ramp, the land is dry."],
        ),
        (
            "On {{ areas.name | and_list }}:\n\n1. Cut no groove.",
            ["On Ring Road and the ramp, cut no groove."],
        ),
        (
            "On {{ areas.name | and_list }}:\n\n1. Table 1 holds.",
            ["On Ring Road and the ramp: Table 1 holds."],
        ),
    ],
)
def test_a_lead_takes_its_single_item_in(body: str, says: list[str]) -> None:
    assert texts(job("longitudinal_grooving", RAMP), body) == says


@pytest.mark.parametrize("verb", ["shall", "must"])
def test_a_duty_in_a_single_item_keeps_its_verb(verb: str) -> None:
    made = job("longitudinal_grooving", {**RAMP, "settings.duty_verb": verb})
    body = "{% for a in areas %}\n\nOn {{ a.name }}:\n\n1. Cut no groove.\n{% endfor %}"

    assert texts(made, body) == [f"On Ring Road and the ramp, the Contractor {verb} cut no groove."]


@pytest.mark.parametrize("name", MADE)
def test_no_example_holds_a_list_of_one_item(name: str) -> None:
    for part in MADE[name].parts:
        for clause in part.clauses:
            items = [isinstance(each, ListItem) and each.level == 0 for each in clause.blocks]
            alone = [
                at
                for at, block in enumerate(clause.blocks)
                if isinstance(block, ListItem) and block.starts and not any(items[at + 1 : at + 2])
            ]
            assert alone == [], clause.id


def test_an_item_keeps_what_the_job_says_in_it() -> None:
    body = "On {{ areas.name | and_list }}:\n\n1. The place is {{ areas.place | and_list }}."

    (block,) = blocks(job("longitudinal_grooving", RAMP), body)

    assert "".join(run.text for run in block.runs).endswith("the place is roadway and ramp.")  # type: ignore[union-attr]
