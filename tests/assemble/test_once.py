"""What is the same on several areas is said once."""

from __future__ import annotations

import pytest

from tests.assemble import document, texts
from tests.support import job

WIDE = {"texture": "longitudinal_grooving", "place": "roadway", "groove": {"width": "1/8 in"}}
THREE = {
    "areas.mainline.groove": {"width": "1/8 in"},
    "areas.ramp": {**WIDE, "name": "the ramp"},
    "areas.curve": {**WIDE, "name": "the curve", "groove": {"width": "0.1 in"}},
}


@pytest.mark.parametrize(
    ("body", "says"),
    [
        (
            "{% for a in areas %}\nOn {{ a.name }}, width is {{ a.groove.width }}.\n{% endfor %}",
            ["On mainline and the ramp, width is 1/8 in. On the curve, width is 0.1 in."],
        ),
        (
            "{% for a in areas %}\nOn {{ a.name }}, wet.\nOn {{ a.name }}, dry.\n{% endfor %}",
            ["On mainline, the ramp and the curve, wet. On mainline, the ramp and the curve, dry."],
        ),
        (
            "{% for a in areas %}\n\nOn {{ a.name }}:\n\n1. {{ a.groove.width }};\n1. wet.\n"
            "\n{% endfor %}\nThen stop.",
            [
                "On mainline and the ramp:",
                "(a) 1/8 in;",
                "(b) wet.",
                "On the curve:",
                "(a) 0.1 in;",
                "(b) wet.",
                "Then stop.",
            ],
        ),
        (
            "{% for a in areas %}\nOn {{ a.name }}, wet.\nStop.\n{% endfor %}",
            ["On mainline, wet. Stop. On the ramp, wet. Stop. On the curve, wet. Stop."],
        ),
        (
            "Cut:\n\n{% for a in areas %}\n1. {{ a.name }};\n{% endfor %}",
            ["Cut:", "(a) mainline;", "(b) the ramp;", "(c) the curve;"],
        ),
        (
            "{% for a in areas %}\n{{ a.name }} is not {{ a.name }}.\n{% endfor %}",
            ["mainline is not mainline. the ramp is not the ramp. the curve is not the curve."],
        ),
    ],
)
def test_equal_statements_on_neighbouring_areas_become_one(body: str, says: list[str]) -> None:
    assert texts(job("longitudinal_grooving", THREE), body) == says


def test_a_statement_before_a_table_keeps_the_blank_line_between_them() -> None:
    body = "On {{ areas.name | and_list }}, cut.\n\nTable: one | Caption\n| a |\n| --- |\n| b |"

    made = texts(job("longitudinal_grooving", {"areas.mainline.name": "Ring Road"}), body)

    assert made == ["On Ring Road, cut.", "Table 1 Caption: a", "b"]


def test_an_absent_value_of_several_areas_is_one_blank_and_a_decision_for_each() -> None:
    areas = {"areas.ramp": {**WIDE, "name": "the ramp"}}
    body = "{% for a in areas %}\nOn {{ a.name }}, skid {{ a.friction.at_least }}.\n{% endfor %}"
    made = job("longitudinal_grooving", areas)

    blank = "<blank:[lower limit of friction]>"
    assert texts(made, body) == [f"On mainline and the ramp, skid {blank}."]
    assert [each.path for each in document(made, body).open_decisions][-2:] == [
        "areas.mainline.friction.at_least",
        "areas.ramp.friction.at_least",
    ]
