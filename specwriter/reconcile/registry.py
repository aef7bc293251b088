"""All relations, found by walking the folder ``relations``."""

from __future__ import annotations

from functools import cache
from importlib import import_module
from pkgutil import walk_packages

from specwriter.model import Area
from specwriter.reconcile import relations
from specwriter.reconcile.relation import Relation


@cache
def all_relations() -> tuple[Relation, ...]:
    """Every relation, in the order of its module's name."""
    names = sorted(
        module.name
        for module in walk_packages(relations.__path__, f"{relations.__name__}.")
        if not module.ispkg
    )
    return tuple(import_module(name).RELATION for name in names)


def relations_for(area: Area) -> tuple[Relation, ...]:
    """The relations that hold in an area."""
    return tuple(relation for relation in all_relations() if relation.applies(area))
