"""Laws of comparing texts, on provisions made by rule."""

from __future__ import annotations

from collections import Counter
from functools import cache

import pytest

from specwriter.compare.edits import edits_of
from specwriter.compare.instructions import instructions
from specwriter.compare.text import Rewritten, compare_texts
from specwriter.compare.text.changes import TextChange, renumbered, text_changes
from specwriter.reading import Text, read_word
from tests.compare.redline.generated import pair

SEEDS = range(200, 260)
MIRROR = {
    "added": "removed",
    "removed": "added",
    "row added": "row removed",
    "row removed": "row added",
}


@cache
def texts(seed: int) -> tuple[Text, Text]:
    old, new = pair(seed)
    return read_word(old), read_word(new)


def told(change: TextChange) -> tuple[str, str, str]:
    return change.kind, change.old, change.new


def mirrored(change: TextChange) -> tuple[str, str, str]:
    return MIRROR.get(change.kind, change.kind), change.new, change.old


@pytest.mark.parametrize("seed", SEEDS)
def test_a_text_does_not_differ_from_itself(seed: int) -> None:
    old, _ = texts(seed)

    match = compare_texts(old, old)

    assert match.is_same
    assert text_changes(match) == ()
    assert renumbered(match) == {}


@pytest.mark.parametrize("seed", SEEDS)
def test_the_way_back_mirrors_the_way_there(seed: int) -> None:
    old, new = texts(seed)
    there = Counter(map(told, text_changes(compare_texts(old, new))))
    back = Counter(map(mirrored, text_changes(compare_texts(new, old))))

    assert there == back


@pytest.mark.parametrize("seed", SEEDS)
def test_the_edits_of_an_instruction_make_the_new_paragraph(seed: int) -> None:
    for part in compare_texts(*texts(seed)).parts:
        if not isinstance(part, Rewritten) or not (edits := edits_of(part.spans)):
            continue
        text = part.old.text
        for edit in edits:
            assert text.count(edit.delete) == 1
            text = text.replace(edit.delete, edit.substitute)
        assert text == part.new.text


@pytest.mark.parametrize("seed", SEEDS)
def test_every_change_has_an_instruction(seed: int) -> None:
    match = compare_texts(*texts(seed))
    changes = text_changes(match)

    given = instructions(changes, renumbered(match))

    assert [change for each in given for change in each.changes] == [
        change for change in changes if not change.follows
    ]
    assert all(each.says for each in given)
