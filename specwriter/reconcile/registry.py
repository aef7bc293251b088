"""All relations and readers, found by walking their folders."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from functools import cache
from importlib import import_module
from pkgutil import walk_packages
from types import ModuleType

from specwriter.model import Area, Job
from specwriter.reconcile import readers, relations
from specwriter.reconcile.relation import Relation
from specwriter.reconcile.requirement import Requirement

Reader = Callable[[Job, Area], Iterator[Requirement]]


@cache
def all_relations() -> tuple[Relation, ...]:
    """Every relation, in the order of its module's name."""
    found: list[Relation] = []
    for module in _modules(relations):
        found += getattr(module, "RELATIONS", None) or [module.RELATION]
    return tuple(found)


@cache
def relations_by_topic() -> dict[str, tuple[Relation, ...]]:
    """Folder name → its relations, in the order of the folders."""
    found: dict[str, list[Relation]] = {}
    for module in _modules(relations):
        topic = module.__name__.split(".")[-2]
        found.setdefault(topic, []).extend(getattr(module, "RELATIONS", None) or [module.RELATION])
    return {topic: tuple(some) for topic, some in found.items()}


@cache
def all_readers() -> tuple[Reader, ...]:
    """Every reader of requirements that do not stand under the name of their variable."""
    return tuple(module.read for module in _modules(readers))


@cache
def all_waits() -> tuple[tuple[str, Callable[[Job, Area], Iterator[str]]], ...]:
    """For each reader the topic and the reasons why something stated could not be read."""
    return tuple(
        (module.__name__.rpartition(".")[2].replace("_", "-"), module.waits)
        for module in _modules(readers)
    )


def _modules(package: ModuleType) -> Iterator[ModuleType]:
    names = sorted(
        module.name
        for module in walk_packages(package.__path__, f"{package.__name__}.")
        if not module.ispkg
    )
    return map(import_module, names)
