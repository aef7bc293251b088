"""How values of the job read in a clause: as written, in both systems, or as a marked blank."""

from __future__ import annotations

import pytest

from specwriter.assemble.document import OpenDecision, Run
from specwriter.assemble.labels import label, short_label, words
from tests.assemble import blocks, document, texts
from tests.support import job

AREA = "areas.mainline"


@pytest.mark.parametrize(
    ("body", "line"),
    [
        ("{{ areas.groove.width | written | and_list }}", "0.125 in"),
        ("{{ areas.groove.width | both | and_list }}", "0.125 in (3.18 mm)"),
        ("{{ areas.removal.depth | limit | and_list }}", "at most 1/2 in (12.7 mm)"),
        ("{{ areas.removal.depth | limit('at_most') | and_list }}", "at most 1/2 in (12.7 mm)"),
        ("{{ areas.joint_match | limit('at_most') | and_list }}", "at most 1/16 in (1.6 mm)"),
        ("{{ areas.texture | words | and_list }}", "diamond grinding"),
        ("{{ areas.name | and_list }}", "mainline"),
        ("{{ sequence | and_list }}", "patching, grinding and marking"),
        ("{{ project.title }}", "Diamond Grinding"),
    ],
)
def test_a_value_reads(body: str, line: str) -> None:
    made = job(
        "diamond_grinding",
        {
            f"{AREA}.removal": {"depth": "at most 1/2 in"},
            f"{AREA}.joint_match": "1/16 in",
            "sequence": ["patching", "grinding", "marking"],
        },
    )

    assert texts(made, body) == [line]


@pytest.mark.parametrize(
    ("path", "written", "line"),
    [
        ("coverage.overlap", "at most 0 in", "0 in (none is allowed)"),
        ("coverage.overlap", "0 mm", "0 mm (none is allowed)"),
        ("coverage.overlap", "0 in to 2 in", "0 in to 2 in (0 to 51 mm)"),
        ("coverage.overlap", "at least 0 in", "at least 0 in (0 mm)"),
    ],
)
def test_a_limit_of_zero_says_that_none_is_allowed(path: str, written: str, line: str) -> None:
    made = job("diamond_grinding", {f"{AREA}.{path}": written})
    body = f"{{{{ areas.{path} | limit('at_most') | and_list }}}}"

    assert texts(made, body) == [line]


@pytest.mark.parametrize(
    ("governing", "dual", "line"),
    [
        ("us", True, "0.125 in (3.18 mm) and 0.8 mm (0.031 in)"),
        ("us", False, "0.125 in and 0.8 mm (0.031 in)"),
        ("si", False, "0.125 in (3.18 mm) and 0.8 mm"),
    ],
)
def test_the_other_system_stands_beside(governing: str, dual: bool, line: str) -> None:
    made = job(
        "diamond_grinding",
        {
            "project.governing_units": governing,
            "project.dual_units": dual,
            f"{AREA}.ridge": {"height": "0.8 mm"},
        },
    )
    body = (
        "{{ areas.groove.width | both | and_list }} and {{ areas.ridge.height | both | and_list }}"
    )

    assert texts(made, body) == [line]


def test_what_reads_the_same_is_said_once() -> None:
    other = {"texture": "diamond_grinding", "place": "ramp", "groove": {"width": "0.125 in"}}
    made = job("diamond_grinding", {"areas.ramp": other})

    assert texts(made, "{{ areas.groove.width | written | and_list }}") == ["0.125 in"]
    assert texts(made, "{{ areas.name | and_list }}") == ["mainline and ramp"]


def test_an_absent_value_is_a_blank_and_an_open_decision() -> None:
    made = document(
        job("diamond_grinding", {f"{AREA}.name": "Elm Street"}),
        "{% for area in areas %}{{ area.equipment.mass | both }} {{ area.groove.spacing }}"
        "{% endfor %}",
    )

    (clause,) = made.parts[2].clauses
    runs = clause.blocks[0].runs  # type: ignore[union-attr]
    assert Run(text="[mass of the machine]", kind="blank") in runs
    assert Run(text="[groove spacing]", kind="blank") in runs
    assert made.open_decisions[-2:] == (
        OpenDecision(
            path=f"{AREA}.equipment.mass", label="mass of the machine, Elm Street", clause="3.1"
        ),
        OpenDecision(
            path=f"{AREA}.groove.spacing", label="groove spacing, Elm Street", clause="3.1"
        ),
    )


def test_a_decision_is_listed_once_with_its_first_clause() -> None:
    made = document(job("diamond_grinding"), "{{ residue.ph }}", "{{ residue.ph }}")

    found = [(d.path, d.clause) for d in made.open_decisions if d.path == "residue.ph"]
    assert found == [("residue.ph", "3.1")]


def test_an_absent_value_is_false_in_a_condition() -> None:
    body = (
        "{% if residue.ph %}A{% endif %}{% if residue.regime == 'haul' %}B{% endif %}"
        "{% if residue.regime != 'haul' %}C{% endif %}{% if residue %}D{% endif %}"
        "{% if areas.smoothness %}E{% endif %}{% if conditions.curbs %}F{% endif %}ok"
    )

    assert texts(job("diamond_grinding"), body) == ["ok"]


def test_the_pay_item_of_an_area_is_looked_up() -> None:
    body = "{% for area in areas %}{{ area.pay_item.name }}, {{ area.pay_item.number }}{% endfor %}"
    made = job("diamond_grinding", {"pay_items.grinding.number": "614.10"})

    assert texts(made, body) == ["Diamond Grinding, 614.10"]


@pytest.mark.parametrize("value", [None, "no_such_item"])
def test_without_a_pay_item_the_area_is_asked_for_it(value: str | None) -> None:
    made = document(
        job("diamond_grinding", {f"{AREA}.pay_item": value}),
        "{% for area in areas %}{{ area.pay_item.name }}{% endfor %}",
    )

    assert f"{AREA}.pay_item" in [d.path for d in made.open_decisions]


def test_needs_are_open_decisions_even_when_not_printed() -> None:
    made = document(
        job("diamond_grinding", {"conditions.curbs": False}),
        "Text.",
        needs="[areas.*.noise, areas.*.groove.width, conditions.curbs, residue.setback]",
    )

    paths = [d.path for d in made.open_decisions if d.clause == "3.1"]
    assert paths == [f"{AREA}.noise", "residue.setback"]


@pytest.mark.parametrize(
    "text",
    [
        "*a* **b**",
        "| a | b |",
        "1. x",
        "# x",
        "{{ x }} {% if %}",
        "<b>",
        "`a`",
        "[a](b)",
        "- x",
        "\\*",
    ],
)
def test_text_of_the_job_is_never_read_as_markdown_or_jinja(text: str) -> None:
    made = job("diamond_grinding", {"project.location": text})

    (paragraph,) = blocks(made, "{{ project.location }}")
    assert paragraph.runs == (Run(text=text),)  # type: ignore[union-attr]

    lines = texts(made, "Table: t | T\n| A | B |\n|---|---|\n| {{ project.location }} | b |")
    assert lines == ["Table 1 T: A | B", f"{text} | b"]


@pytest.mark.parametrize(
    ("path", "text"),
    [
        ("areas.mainline.groove.width", "groove width"),
        ("areas.mainline.groove.per_foot", "number of grooves per foot"),
        ("areas.mainline.testing.groove_depth.where", "place of the groove depth test"),
        ("areas.mainline.smoothness.test.method", "method of the smoothness test"),
        ("areas.mainline.limits.0.from", "start of the limits"),
        ("areas.mainline.limits.1.from", "start of the limits, no. 2"),
        ("areas.mainline.friction.tyre", "tire of the friction test"),
        ("project.provision", "provision"),
        ("residue.ph", "pH of the residue"),
        ("conditions.coarse_aggregate.kind", "coarse aggregate kind"),
        ("areas.ramp.conditions.coarse_aggregate.kind", "coarse aggregate kind"),
        ("pay_items.a.number", "number"),
        ("pay_items", "pay items"),
    ],
)
def test_a_path_reads_in_plain_words(path: str, text: str) -> None:
    assert short_label(path) == text


def test_a_label_says_where() -> None:
    made = job("rural-grooving")

    assert label("areas.deck.groove.depth", made) == "groove depth, Harrow Creek bridge deck"
    assert label("pay_items.grooving.number", made) == "number, pay item Longitudinal Grooving"
    assert label("submittals.equipment.due", made) == "time due, Equipment list and head pattern"
    assert label("residue.ph", made) == "pH of the residue"


def test_fixed_words() -> None:
    assert words("at_contract_price") == "at the contract unit price"
    assert words("jointed_plain_concrete") == "jointed plain concrete"


def test_a_fixed_figure_is_printed_as_the_clause_has_it() -> None:
    front = {"fixed": "{low: {value: '2', document: 40 CFR}, high: {value: 12.50, document: D}}"}

    made = texts(job("diamond_grinding"), "From {{ fixed.low }} to {{ fixed.high }}.", **front)

    assert made == ["From 2 to 12.50."]
