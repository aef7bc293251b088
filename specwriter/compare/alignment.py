"""Which item of one list or mapping is which item of the other: by content, never by position."""

from __future__ import annotations

from collections.abc import Hashable, Iterator, Mapping, Sequence
from typing import TypeVar

from specwriter.compare.leaf import Value, content
from specwriter.compare.precision import restated
from specwriter.model import Node
from specwriter.model.contract import Accepted
from specwriter.quantity import Quantity

_RENAMED = 0.8
"""Share of equal values from which an area under another id counts as the same area."""

_IDENTITY = ("finding", "at")
"""Keys that make an acceptance what it is; nothing else in a job has them."""

_Content = dict[str, Value]
K = TypeVar("K", bound=Hashable)


def align_items(
    old: Sequence[Node], new: Sequence[Node]
) -> Iterator[tuple[Node | None, Node | None]]:
    """Pairs the items of two lists that share most values; the rest stand alone."""
    was = dict(enumerate(content(node) for node in old))
    now = dict(enumerate(content(node) for node in new))
    pairs = _best_pairs(was, now, above=0)
    yield from ((old[i], new[j]) for i, j in pairs.items())
    left = [node for i, node in enumerate(old) if i not in pairs]
    right = [node for j, node in enumerate(new) if j not in pairs.values()]
    if len(left) == len(right) == 1 and not isinstance(left[0], Accepted):
        yield left[0], right[0]
        return
    yield from ((node, None) for node in left)
    yield from ((None, node) for node in right)


def renamed(old: Mapping[str, Node], new: Mapping[str, Node]) -> dict[str, str]:
    """Old id → new id of entries that stand under another id with (nearly) the same content."""
    gone = {key: content(node) for key, node in old.items() if key not in new}
    come = {key: content(node) for key, node in new.items() if key not in old}
    return _best_pairs(gone, come, above=_RENAMED)


def _best_pairs(old: dict[K, _Content], new: dict[K, _Content], *, above: float) -> dict[K, K]:
    shares = {(i, j): _share(old[i], new[j]) for i in old for j in new}
    found: dict[K, K] = {}
    for i, j in sorted(shares, key=lambda pair: (-shares[pair], _tie(old[pair[0]], new[pair[1]]))):
        if shares[i, j] > above and i not in found and j not in found.values():
            found[i] = j
    return found


def _tie(old: _Content, new: _Content) -> list[str]:
    """Settles equal shares alike whatever the order of the lists, and in both directions."""
    return sorted(repr(sorted((k, str(v)) for k, v in each.items())) for each in (old, new))


def _share(old: _Content, new: _Content) -> float:
    """Share of all keys under which both hold the same value, 0 to 1."""
    if any(old.get(key) != new.get(key) for key in _IDENTITY):
        return 0
    same = sum(key in new and _same(value, new[key]) for key, value in old.items())
    return same / max(len(old.keys() | new.keys()), 1)


def _same(old: Value, new: Value) -> bool:
    if isinstance(old, Quantity) and isinstance(new, Quantity):
        return old.text == new.text or restated(old, new, old.interval, new.interval)
    return old == new
