"""What two sequences have in common, in near-linear time for texts that are mostly alike.

What begins and ends alike is taken first, then what occurs once in both and stands in the same
order (so that a repeated line never drags a long stretch out of place), and the standard
library's matcher does the short stretches between.
"""

from __future__ import annotations

from bisect import bisect_left
from collections import Counter
from collections.abc import Hashable, Iterator, Sequence
from difflib import SequenceMatcher

Stretch = tuple[int, int, int, int]
"""Old from, old to, new from, new to."""

_SHORT = 400
"""Up to so many items on the two sides together are left to the standard library's matcher."""


def equal_stretches(old: Sequence[Hashable], new: Sequence[Hashable]) -> list[Stretch]:
    """The longest stretches found alike, in order and not overlapping; alike in both directions."""
    if _stands_behind(old, new):
        return [(c, d, a, b) for a, b, c, d in equal_stretches(new, old)]
    joined: list[Stretch] = []
    for a, b, c, d in _equal(old, new, 0, len(old), 0, len(new)):
        if joined and joined[-1][1] == a and joined[-1][3] == c:
            joined[-1] = (joined[-1][0], b, joined[-1][2], d)
        else:
            joined.append((a, b, c, d))
    return joined


def _stands_behind(old: Sequence[Hashable], new: Sequence[Hashable]) -> bool:
    """An order of any two sequences, for what comes of equal choices must not hang on the side."""
    if len(old) != len(new):
        return len(old) > len(new)
    return next((str(a) > str(b) for a, b in zip(old, new, strict=True) if a != b), False)


def gaps(stretches: Sequence[Stretch], old: int, new: int) -> Iterator[tuple[Stretch, Stretch]]:
    """Each equal stretch behind the unequal one before it; the last equal one may be empty."""
    a = c = 0
    for each in (*stretches, (old, old, new, new)):
        yield (a, each[0], c, each[2]), each
        a, c = each[1], each[3]


def _equal(
    old: Sequence[Hashable], new: Sequence[Hashable], a: int, b: int, c: int, d: int
) -> Iterator[Stretch]:
    start = a
    while a < b and c < d and old[a] == new[c]:
        a, c = a + 1, c + 1
    if a > start:
        yield start, a, c - (a - start), c
    end = b
    while b > a and d > c and old[b - 1] == new[d - 1]:
        b, d = b - 1, d - 1
    if a < b and c < d:
        yield from _between(old, new, a, b, c, d)
    if end > b:
        yield b, end, d, d + (end - b)


def _between(
    old: Sequence[Hashable], new: Sequence[Hashable], a: int, b: int, c: int, d: int
) -> Iterator[Stretch]:
    anchors = _anchors(old, new, a, b, c, d)
    if anchors:
        for i, j in (*anchors, (b, d)):
            yield from _equal(old, new, a, i, c, j)
            if i < b:
                yield i, i + 1, j, j + 1
            a, c = i + 1, j + 1
        return
    # Without anchors a long stretch is made of common items; the matcher may then ignore the
    # most common ones, which keeps it from taking the square of the length.
    common = b - a + d - c > _SHORT
    matcher = SequenceMatcher(None, old[a:b], new[c:d], autojunk=common)
    for block in matcher.get_matching_blocks():
        if block.size:
            yield a + block.a, a + block.a + block.size, c + block.b, c + block.b + block.size


def _anchors(
    old: Sequence[Hashable], new: Sequence[Hashable], a: int, b: int, c: int, d: int
) -> list[tuple[int, int]]:
    """Pairs of items that occur once on each side, the longest run of them in one order."""
    if b - a + d - c <= _SHORT:
        return []
    was, now = Counter(old[a:b]), Counter(new[c:d])
    place = {old[i]: i for i in range(a, b) if was[old[i]] == 1}
    pairs = [(place[new[j]], j) for j in range(c, d) if now[new[j]] == 1 and new[j] in place]
    return [pairs[k] for k in longest_rise([i for i, _ in pairs])]


def longest_rise(numbers: Sequence[int]) -> list[int]:
    """Positions of a longest rising run, by patience sorting."""
    tails: list[int] = []
    ends: list[int] = []
    before: list[int] = []
    for position, number in enumerate(numbers):
        pile = bisect_left(tails, number)
        before.append(ends[pile - 1] if pile else -1)
        if pile == len(tails):
            tails.append(number)
            ends.append(position)
        else:
            tails[pile], ends[pile] = number, position
    return _traced(before, ends[-1] if ends else -1)


def heaviest_rise(numbers: Sequence[int], weights: Sequence[int]) -> list[int]:
    """Positions of the rising run with the greatest weight: what lies outside it has moved."""
    order = {number: rank for rank, number in enumerate(sorted(set(numbers)), start=1)}
    best: list[tuple[int, int]] = [(0, -1)] * (len(order) + 1)
    before: list[int] = []
    total: list[tuple[int, int]] = [(0, -1)]
    for position, number in enumerate(numbers):
        rank = order[number]
        weight, last = _most(best, rank - 1)
        before.append(last)
        mine = (weight + weights[position], position)
        total.append(mine)
        place = rank
        while place < len(best):
            best[place] = max(best[place], mine)
            place += place & -place
    return _traced(before, max(total, key=lambda each: each[0])[1])


def _most(best: Sequence[tuple[int, int]], rank: int) -> tuple[int, int]:
    found = (0, -1)
    while rank > 0:
        found = max(found, best[rank])
        rank -= rank & -rank
    return found


def _traced(before: Sequence[int], last: int) -> list[int]:
    found = []
    while last >= 0:
        found.append(last)
        last = before[last]
    return found[::-1]
