"""Every requirement of the job is stated by a chosen clause, or named as absent."""

from __future__ import annotations

from specwriter.assemble import assemble
from specwriter.assemble.closure import expresses, requirements
from tests.assemble import clause, document, library
from tests.support import job

AREA = "areas.mainline"
SMALL = job(
    "diamond_grinding",
    {
        f"{AREA}.limits": None,
        f"{AREA}.land": None,
        f"{AREA}.groove": {"width": "1/8 in", "pattern": "random"},
        f"{AREA}.equipment": {"several_machines": True},
        "pay_items.grinding.quantity": "100 SY",
        "pay_items.grinding.includes": ["water"],
        "conditions": {"curbs": True},
    },
)


def test_facts_names_quantities_and_prices_are_not_requirements() -> None:
    assert dict(requirements(SMALL)) == {
        f"{AREA}.groove.width": True,
        f"{AREA}.groove.pattern": False,
        f"{AREA}.equipment.several_machines": False,
        f"{AREA}.pay_item": False,
        "pay_items.grinding.name": True,
        "pay_items.grinding.unit": True,
        "pay_items.grinding.includes.0": True,
    }


def test_without_clauses_nothing_is_expressed() -> None:
    assert document(SMALL, "Text.").unexpressed == tuple(dict(requirements(SMALL)))


def test_a_number_must_be_declared_and_printed() -> None:
    declared = document(SMALL, "Text.", expresses="[areas.*.groove]").unexpressed
    printed = document(SMALL, "{{ areas.groove.width | both | and_list }}").unexpressed
    both = document(
        SMALL, "{{ areas.groove.width | both | and_list }}", expresses="[areas.*.groove]"
    ).unexpressed

    assert f"{AREA}.groove.width" in declared
    assert f"{AREA}.groove.pattern" not in declared
    assert f"{AREA}.groove.width" in printed
    assert f"{AREA}.groove.width" not in both


def test_another_clause_may_print_it() -> None:
    made = document(
        SMALL,
        "{{ pay_item_table }}",
        "{% for item in pay_items %}{{ item.includes | and_list }}{% endfor %}",
        expresses="[areas, pay_items.*]",
    )

    assert made.unexpressed == (f"{AREA}.groove.width",)


def test_a_clause_speaks_for_its_textures_only() -> None:
    made = job("as-received")
    grooving = clause("Text.", textures="[longitudinal_grooving]", expresses="[areas.*.groove]")

    assert expresses(grooving, "areas.curve.groove.width", made)
    assert not expresses(grooving, "areas.ring_road.groove.width", made)
    assert not expresses(grooving, "areas.curve.land.width", made)


def test_a_clause_that_was_not_chosen_expresses_nothing() -> None:
    left_out = clause(
        "{{ areas.groove.width | both | and_list }}",
        when="residue",
        expresses="[areas.*.groove]",
    )

    assert f"{AREA}.groove.pattern" in assemble(SMALL, library(left_out)).unexpressed
