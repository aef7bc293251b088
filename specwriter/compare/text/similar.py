"""Which texts of two lists are versions of one text: by the words they share."""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Iterator, Sequence

from specwriter.compare.text.sequence import longest_rise

Words = Counter[str]

_ALL_PAIRS = 2_500
"""Up to so many pairs are all looked at; beyond, only texts that share a rare word."""

_RARE = 8
"""A word that at most so many texts of a side hold tells texts apart."""


def overlap(old: Words, new: Words) -> float:
    """Share of words in common, 0 to 1; the number of each word counts."""
    total = old.total() + new.total()
    return 2 * (old & new).total() / total if total else 1.0


def similar_pairs(
    old: Sequence[Words], new: Sequence[Words], least: float, *, ordered: bool
) -> dict[int, int]:
    """Old position → new position of the most similar texts, none below ``least``.

    ``ordered`` leaves out pairs that would cross another.
    """
    scored = [(overlap(old[i], new[j]), i, j) for i, j in _candidates(old, new)]
    found: dict[int, int] = {}
    taken: set[int] = set()
    near = sorted((each for each in scored if each[0] >= least), key=_nearest)
    for _, i, j in near:
        if i not in found and j not in taken:
            found[i] = j
            taken.add(j)
    rows = sorted(found)
    if ordered:
        rows = [rows[k] for k in longest_rise([found[i] for i in rows])]
    return {i: found[i] for i in rows}


def _nearest(scored: tuple[float, int, int]) -> tuple[float, int, int, int]:
    """The most similar first, then those at the nearest positions; alike in both directions."""
    score, i, j = scored
    return -score, abs(i - j), i + j, i


def _candidates(old: Sequence[Words], new: Sequence[Words]) -> Iterator[tuple[int, int]]:
    if len(old) * len(new) <= _ALL_PAIRS:
        yield from ((i, j) for i in range(len(old)) for j in range(len(new)))
        return
    places = defaultdict(list)
    for j, words in enumerate(new):
        for word in words:
            places[word].append(j)
    spread = Counter(word for words in old for word in words)
    for i, words in enumerate(old):
        rare = [w for w in words if spread[w] <= _RARE and 0 < len(places.get(w, ())) <= _RARE]
        shared = Counter(j for word in rare for j in places[word])
        yield from ((i, j) for j, _ in shared.most_common(_RARE))
