"""Which relations can matter where only some variables are stated."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Sequence
from functools import lru_cache

from specwriter.reconcile.propagate import users_of
from specwriter.reconcile.relation import Relation


def connected(variables: Iterable[str], relations: Sequence[Relation]) -> tuple[Relation, ...]:
    """The relations that the variables reach; the others cannot matter.

    Nor can one that ends in a variable of which nothing else speaks, if some value always fits
    or if that variable is a result for which nobody asks.
    """
    stated = set(variables)
    speaking = [one for one in relations if not one.about or stated.intersection(one.about)]
    users = users_of(speaking)
    reached: set[int] = set()
    waiting = list(stated)
    seen = set(stated)
    while waiting:
        for place in users.get(waiting.pop(), ()):
            if place not in reached:
                reached.add(place)
                fresh = [name for name in speaking[place].variables if name not in seen]
                seen.update(fresh)
                waiting += fresh
    used = [speaking[place] for place in sorted(reached)]
    return _asked_for(used, stated)


def _asked_for(used: list[Relation], stated: set[str]) -> tuple[Relation, ...]:
    while True:
        counts = Counter(name for one in used for name in one.variables)
        free = {name for name, count in counts.items() if count == 1 and name not in stated}
        kept = [
            one
            for one in used
            if free.isdisjoint(_always_fitting(one)) and not (one.assures and one.output in free)
        ]
        if len(kept) == len(used):
            return tuple(kept)
        used = kept


@lru_cache(maxsize=2048)
def _always_fitting(relation: Relation) -> tuple[str, ...]:
    return relation.shape.always_fitting
