"""Numbers of parts, clauses and tables; references; what refers to nothing."""

from __future__ import annotations

import pytest

from specwriter.assemble import LibraryError, assemble
from tests.assemble import clause, document, library, shown
from tests.support import job

TABLE = "Table: {0} | {0}\n| A | B |\n|---|---|\n| 1 | 2 |\n"


def test_parts_keep_their_numbers_when_they_are_empty() -> None:
    made = document(job("diamond_grinding"), "One.", "Two.")

    assert [(p.number, p.title) for p in made.parts] == [
        ("1.", "Description"),
        ("2.", "Materials"),
        ("3.", "Construction Requirements"),
    ]
    assert [(c.number, c.title, c.blocks) for c in made.parts[1].clauses] == [
        ("2.1", "Not used", ())
    ]
    assert [(c.number, c.id) for c in made.parts[2].clauses] == [
        ("3.1", "common.c0"),
        ("3.2", "common.c1"),
    ]


def test_clauses_stand_in_the_order_they_ask_for() -> None:
    late, early = clause("Late.", "common.a", order="20"), clause("Early.", "common.b", order="3")

    made = assemble(job("diamond_grinding"), library(late, early))

    assert [c.id for c in made.parts[2].clauses] == ["common.b", "common.a"]


def test_references_carry_numbers_forward_and_back() -> None:
    made = document(
        job("diamond_grinding"),
        "See {{ ref('common.c1') }} and Table {{ table('two') }}.",
        TABLE.format("one") + "\nText.\n\n" + TABLE.format("two") + "\nSee {{ ref('common.c0') }}.",
    )

    first, second = made.parts[2].clauses
    assert shown(first.blocks[0].runs) == "See <reference:3.2> and Table <reference:2>."  # type: ignore[union-attr]
    assert shown(second.blocks[-1].runs) == "See <reference:3.1>."  # type: ignore[union-attr]
    assert first.blocks[0].runs[1].target == "common.c1"  # type: ignore[union-attr]
    assert [b.number for b in second.blocks if hasattr(b, "number")] == [1, 2]


def test_a_reference_in_a_table_is_resolved() -> None:
    body = "Table: t | T\n| A | B |\n|---|---|\n| {{ ref('common.c0') }} | x |"

    made = document(job("diamond_grinding"), body)

    assert shown(made.parts[2].clauses[0].blocks[0].rows[0][0]) == "<reference:3.1>"  # type: ignore[union-attr]


def test_a_reference_to_a_clause_that_was_not_chosen_is_a_fault() -> None:
    referring = clause("See {{ ref('common.two') }}.", "common.one")
    left_out = clause("Text.", "common.two", when="conditions.curbs")

    with pytest.raises(LibraryError) as caught:
        assemble(job("diamond_grinding"), library(referring, left_out))

    (fault,) = caught.value.faults
    assert fault.place.file == "clauses/common/one.md"
    assert "'common.two', which is not in the document" in fault.says

    chosen = job("diamond_grinding", {"conditions.curbs": True})
    assert assemble(chosen, library(referring, left_out)).parts[2].clauses[1].number == "3.2"


def test_a_table_name_stands_once() -> None:
    with pytest.raises(LibraryError, match="twice"):
        document(job("diamond_grinding"), TABLE.format("one"), TABLE.format("one"))
