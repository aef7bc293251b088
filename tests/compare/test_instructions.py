"""Numbered instructions that a person can carry out with the old document in hand."""

from __future__ import annotations

from specwriter.compare.instructions import Instruction, instructions
from specwriter.compare.text import compare_texts
from specwriter.compare.text.changes import renumbered, text_changes
from specwriter.reading import read_plain

HEAD = "# 1 Work\n\nThe work is as the table says, and as the Engineer orders.\n\n"
TABLE = "| Road | Lane | Area |\n|---|---|---|\n"
NORTH = "| Quarry Street | 1 | 3,520 SY |\n"
SOUTH = "| Quarry Street | 2 | 3,520 SY |\n"
MILL = "| Mill Lane | 1 | 880 SY |\n"
FORD = "| Ford Road | 1 | 440 SY |\n"


def told(old: str, new: str) -> tuple[Instruction, ...]:
    match = compare_texts(read_plain(old, markdown=True), read_plain(new, markdown=True))
    return instructions(text_changes(match), renumbered(match))


def test_rows_with_one_first_cell_are_told_apart() -> None:
    (only,) = told(HEAD + TABLE + NORTH + SOUTH + MILL, HEAD + TABLE + NORTH + MILL)

    assert only.says == 'In 1 Work, table 1, delete the row "Quarry Street | 2".'


def test_rows_that_come_in_one_place_come_in_their_order() -> None:
    (only,) = told(HEAD + TABLE + NORTH, HEAD + TABLE + NORTH + MILL + FORD)

    assert only.says.endswith('add the following rows after the row "Quarry Street":')
    assert only.given == ("Mill Lane | 1 | 880 SY", "Ford Road | 1 | 440 SY")


def test_paragraphs_that_come_in_one_place_come_in_their_order() -> None:
    (only,) = told(HEAD + "Stop.\n", HEAD + "Wash the lane.\n\nCount the blades.\n\nStop.\n")

    assert only.says.startswith('In 1 Work, add the following after "The work is as')
    assert only.given == ("Wash the lane.", "Count the blades.")


def test_what_comes_first_comes_at_the_beginning() -> None:
    (only,) = told("Stop the saw at once.\n", "Wash the lane.\n\nStop the saw at once.\n")

    assert only.says == "In the opening, add the following at its beginning:"


def test_a_table_that_comes_for_another_is_substituted() -> None:
    other = "| Sieve | Share |\n|---|---|\n| No. 4 | 95 |\n| No. 8 | 60 |\n"

    (only,) = told(HEAD + TABLE + NORTH + MILL, HEAD + other)

    assert only.says == "In 1 Work, delete table 1 and substitute the following table:"
    assert only.given == ("Sieve | Share", "No. 4 | 95", "No. 8 | 60")


def test_two_changes_in_a_few_words_are_given_as_a_whole() -> None:
    (only,) = told("Saw 24 ft (7.3 m) wide.\n", "Saw 7.3 m (24.0 ft) wide.\n")

    assert only.says.endswith("delete the text and substitute the following:")
    assert only.given == ("Saw 7.3 m (24.0 ft) wide.",)


def test_a_new_clause_follows_one_that_is_named_as_the_old_document_names_it() -> None:
    old = "# 1 Work\n\nSaw.\n\n# 2 Tests\n\nMeasure.\n\n# 3 Payment\n\nPay by the yard.\n"
    new = "# 1 Tests\n\nMeasure.\n\n# 2 Residue\n\nHaul it.\n\n# 3 Payment\n\nPay by the yard.\n"

    told_ = [each.says for each in told(old, new)]

    assert "After 2 Tests, add the clause 2 Residue:" in told_
