"""The alignment of sequences: always an alignment, and a good one."""

from __future__ import annotations

from difflib import SequenceMatcher

from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from specwriter.compare.text.sequence import (
    equal_stretches,
    gaps,
    heaviest_rise,
    longest_rise,
)

CALM = settings(deadline=None, suppress_health_check=[HealthCheck.too_slow])
LISTS = st.lists(st.sampled_from("abcde"), max_size=30)


@CALM
@given(LISTS, LISTS)
def test_stretches_are_equal_rise_and_do_not_overlap(old: list[str], new: list[str]) -> None:
    last = (0, 0)
    for a, b, c, d in equal_stretches(old, new):
        assert old[a:b] == new[c:d]
        assert a < b
        assert (a, c) >= last
        last = (b, d)


@CALM
@given(LISTS, LISTS)
def test_the_two_sides_are_put_together_from_gaps_and_stretches(
    old: list[str], new: list[str]
) -> None:
    was: list[str] = []
    now: list[str] = []
    for (a, b, c, d), (e, f, g, h) in gaps(equal_stretches(old, new), len(old), len(new)):
        was += old[a:b] + old[e:f]
        now += new[c:d] + new[g:h]

    assert (was, now) == (old, new)


@CALM
@given(LISTS)
def test_a_sequence_equals_itself(items: list[str]) -> None:
    assert equal_stretches(items, items) == ([(0, len(items), 0, len(items))] if items else [])


def test_long_texts_are_aligned_as_well_as_by_the_standard_library() -> None:
    old = [f"line {i}" if i % 9 else "" for i in range(900)]
    new = [line for i, line in enumerate(old) if i % 17] + ["more"] * 5

    ours = sum(b - a for a, b, _, _ in equal_stretches(old, new))
    theirs = SequenceMatcher(None, old, new, autojunk=False).get_matching_blocks()
    assert ours >= 0.99 * sum(block.size for block in theirs)


@CALM
@given(st.lists(st.integers(0, 20), max_size=15, unique=True))
def test_equal_weights_give_a_longest_rise(numbers: list[int]) -> None:
    heavy = heaviest_rise(numbers, [1] * len(numbers))
    long = longest_rise(numbers)

    assert len(heavy) == len(long)
    for rise in (heavy, long):
        assert [numbers[i] for i in rise] == sorted(numbers[i] for i in rise)


def test_the_heavier_of_two_crossing_items_stays() -> None:
    assert heaviest_rise([1, 0], [1, 5]) == [1]
    assert heaviest_rise([1, 0], [5, 1]) == [0]
