"""Two texts side by side: clauses, paragraphs, rows, words, and what moved."""

from __future__ import annotations

import pytest

from specwriter.compare.text import (
    Added,
    Match,
    MatchedTable,
    Removed,
    Rewritten,
    TextMatch,
    compare_texts,
)
from specwriter.compare.text.changes import text_changes
from specwriter.reading import read_plain

TEXT = """\
# Grooving of Concrete

## 1. Description

### 1.1 Work

Cut grooves in the pavement with a width of 1/8 in and a depth of 3/16 in.

### 1.2 Corrections

The Contractor shall not cut again where a groove is shallower than its limit.

| Property | Limit |
| --- | --- |
| Groove width | 1/8 in |
| Groove depth | 3/16 in |

### 1.3 Residue

Collect the residue in the pass that produces it and haul it to the permitted site.
"""


def matched(old: str, new: str) -> TextMatch:
    return compare_texts(read_plain(old, markdown=True), read_plain(new, markdown=True))


def changes(match: TextMatch) -> list[str]:
    found = []
    for clause in match.clauses:
        for part in clause.parts:
            if isinstance(part, Rewritten):
                words = [f"{span.kind[0]}:{span.text}" for span in part.spans]
                found.append(" ".join(word for word in words if not word.startswith("e:")))
            elif isinstance(part, Removed | Added):
                move = f" move {part.move}" if part.move else ""
                found.append(f"{type(part).__name__}{move}: {part.block.text}")
            elif isinstance(part, MatchedTable):
                found += [
                    f"row {'-' if row.new is None else '+'} {(row.old or row.new).text}"  # type: ignore[union-attr]
                    for row in part.rows
                    if row.old is None or row.new is None
                ]
    return found


def test_equal_texts_match_in_every_part() -> None:
    match = matched(TEXT, TEXT)

    assert match.is_same
    assert changes(match) == []
    assert [clause.title for clause in match.clauses if clause.new][-1] == "1.3 Residue"


def test_a_lost_not_is_one_removed_word() -> None:
    assert changes(matched(TEXT, TEXT.replace("shall not cut", "shall cut"))) == ["r:not "]


def test_a_fraction_is_one_word() -> None:
    found = changes(matched(TEXT, TEXT.replace("depth of 3/16 in", "depth of 5/16 in")))

    assert found == ["r:3/16 a:5/16"]


def test_a_row_in_the_middle_is_one_added_row() -> None:
    new = TEXT.replace("| Groove depth", "| Groove spacing | 3/4 in |\n| Groove depth")

    assert changes(matched(TEXT, new)) == ["row + Groove spacing\t3/4 in"]


def test_a_row_that_moved_is_told_once() -> None:
    table = "| What | How |\n|---|---|\n| Depth | ruler |\n| Width | gauge |\n| Ride | profiler |\n"
    row = "| Depth | ruler |\n"

    found = text_changes(matched(table, table.replace(row, "") + row))

    assert [(each.kind, each.place, each.after) for each in found] == [
        ("moved", 'table 1, row "Depth"', 'the row "Ride"')
    ]


def test_two_clauses_swapped_are_one_move() -> None:
    first = TEXT[TEXT.index("### 1.2") : TEXT.index("### 1.3")]
    second = TEXT[TEXT.index("### 1.3") :] + "\n"
    new = TEXT[: TEXT.index("### 1.2")] + second.replace("1.3", "1.2") + first.replace("1.2", "1.3")

    match = matched(TEXT, new)

    moves = [clause for clause in match.clauses if clause.move]
    assert [(clause.old is None, clause.title) for clause in moves] == [
        (True, "1.2 Residue"),
        (False, "1.3 Residue"),
    ]
    assert {part.move for clause in moves for part in clause.parts} == {1}  # type: ignore[union-attr]


@pytest.mark.parametrize("changed", ["1.2", "1.3"])
def test_of_two_clauses_swapped_the_one_that_changed_is_marked_in_its_place(changed: str) -> None:
    first = TEXT[TEXT.index("### 1.2") : TEXT.index("### 1.3")]
    second = TEXT[TEXT.index("### 1.3") :] + "\n"
    edited = {"1.2": first, "1.3": second}
    edited[changed] = edited[changed].rstrip() + " Record it.\n\n"
    new = TEXT[: TEXT.index("### 1.2")] + edited["1.3"] + edited["1.2"]

    match = matched(TEXT, new)

    moves = {clause.title for clause in match.clauses if clause.move}
    assert len(moves) == 1
    assert not next(iter(moves)).startswith(changed)


def test_a_paragraph_that_moved_alone_is_known_again() -> None:
    moved = "Collect the residue in the pass that produces it and haul it to the permitted site.\n"
    new = TEXT.replace(moved, "See above.\n").replace("### 1.2", f"{moved}\n### 1.2")

    found = changes(matched(TEXT, new))

    assert f"Added move 1: {moved.strip()}" in found
    assert f"Removed move 1: {moved.strip()}" in found


def test_a_clause_under_another_heading_is_known_by_its_words() -> None:
    match = matched(TEXT, TEXT.replace("1.3 Residue", "1.3 Slurry"))

    last = match.clauses[-1]
    assert last.old is not None
    assert isinstance(last.parts[0], Rewritten)
    assert isinstance(last.parts[1], Match)
