"""Walks two jobs in step and yields what stands in the same place of both.

A place is a path of keys; items of lists are paired by content, areas and other named entries
by their id (an area that only changed its id is followed).
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from typing import Any

from specwriter.compare.alignment import align_items, renamed
from specwriter.compare.leaf import Leaf, entries
from specwriter.model import Area, Job, Node
from specwriter.model.results import Test

Key = tuple[str, ...]
"""Keys from the job or the area down, without ids and positions: ("groove", "width")."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Pair:
    """The same place in both jobs; a side is ``None`` where the place is absent.

    A side that is a ``Node`` is a whole entry that was added or removed, or, on both sides, an
    area that changed its id.
    """

    key: Key
    old: Leaf | Node | None
    new: Leaf | Node | None
    old_area: Area | None = None
    new_area: Area | None = None


@dataclass(frozen=True, slots=True)
class _Context:
    key: Key
    old_area: Area | None = None
    new_area: Area | None = None

    def below(self, name: str) -> _Context:
        return _Context((*self.key, name), self.old_area, self.new_area)

    def pair(self, old: Leaf | Node | None, new: Leaf | Node | None) -> Pair:
        return Pair(key=self.key, old=old, new=new, old_area=self.old_area, new_area=self.new_area)


def walk(old: Job, new: Job) -> Iterator[Pair]:
    """Every place that either job fills, areas first."""
    names = renamed(old.areas, new.areas)
    before = {names.get(key, key): area for key, area in old.areas.items()}
    for key in _union(before, new.areas):
        yield from _areas(before.get(key), new.areas.get(key))
    rest = {key: value for key, value in entries(old).items() if key != "areas"}
    for key, value in rest.items():
        yield from _values(value, entries(new)[key], _Context((key,)), old, new)


def _areas(old: Area | None, new: Area | None) -> Iterator[Pair]:
    context = _Context((), old, new)
    if old is None or new is None:
        yield context.below("area").pair(old, new)
        return
    if old.id != new.id:
        yield context.below("area").pair(old, new)
    yield from _nodes(old, new, context)


def _nodes(old: Node | None, new: Node | None, context: _Context) -> Iterator[Pair]:
    kind = old or new
    if kind is None:
        return
    was, now = (entries(node) if node else {} for node in (old, new))
    for key in entries(kind):
        yield from _values(was.get(key), now.get(key), context.below(key), old, new)


def _values(
    old: Any, new: Any, context: _Context, old_owner: Node | None, new_owner: Node | None
) -> Iterator[Pair]:
    sample = old if old not in (None, (), {}) else new
    if sample in (None, (), {}):
        return
    if isinstance(sample, Node):
        yield from _entry(old, new, context, whole=isinstance(sample, Test))
    elif isinstance(sample, dict):
        old, new = old or {}, new or {}
        for key in _union(old, new):
            yield from _entry(old.get(key), new.get(key), context, whole=True)
    elif isinstance(sample, tuple):
        yield from _lists(old or (), new or (), context, old_owner, new_owner)
    else:
        yield context.pair(
            _leaf(old, context.key[-1], old_owner), _leaf(new, context.key[-1], new_owner)
        )


def _entry(old: Any, new: Any, context: _Context, *, whole: bool) -> Iterator[Pair]:
    """A noun in both jobs, or in one: then as one pair when it is a ``whole`` of its own."""
    if whole and (old is None or new is None):
        yield context.pair(old, new)
    else:
        yield from _nodes(old, new, context)


def _lists(
    old: tuple[Any, ...],
    new: tuple[Any, ...],
    context: _Context,
    old_owner: Node | None,
    new_owner: Node | None,
) -> Iterator[Pair]:
    if isinstance((*old, *new)[0], Node):
        for was, now in align_items(old, new):
            yield from _entry(was, now, context, whole=True)
        return
    before, after = _items(old, context, old_owner), _items(new, context, new_owner)
    for text in _union(before, after):
        yield context.pair(before.get(text), after.get(text))
    if context.key[-1] == "sequence" and _order(before, after) != _order(after, before):
        yield context.below("order").pair(
            _leaf(", ".join(before), "sequence", old_owner),
            _leaf(", ".join(after), "sequence", new_owner),
        )


def _items(listed: tuple[Any, ...], context: _Context, owner: Node | None) -> dict[str, Leaf]:
    key = context.key[-1]
    path = owner.path_to(key) if owner else key
    return {
        str(item): Leaf(path=f"{path}.{index}", value=item, owner=owner)
        for index, item in enumerate(listed)
    }


def _order(items: dict[str, Leaf], others: dict[str, Leaf]) -> list[str]:
    """The items that both lists hold, in the order of the first."""
    return [item for item in items if item in others]


def _leaf(value: Any, key: str, owner: Node | None) -> Leaf | None:
    if value is None or owner is None:
        return None
    return Leaf(path=owner.path_to(key), value=value, owner=owner)


def _union(old: Any, new: Any) -> list[str]:
    """Keys of both, the new ones first in their order."""
    return [*new, *(key for key in old if key not in new)]


def path_moves(pairs: Iterable[Pair]) -> dict[str, str]:
    """Old path → new path of what both jobs hold at different paths."""
    return {
        pair.old.path: pair.new.path
        for pair in pairs
        if pair.old and pair.new and pair.old.path != pair.new.path
    }
