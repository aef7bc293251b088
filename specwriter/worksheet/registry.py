"""Finds every figure below the folder ``figures``; there is no list to keep."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from functools import cache
from importlib import import_module
from pkgutil import walk_packages

from specwriter.model import Job
from specwriter.worksheet import figures
from specwriter.worksheet.figure import Line

TOPICS = (
    "groove",
    "texture",
    "removal",
    "coverage",
    "quantity",
    "ride",
    "pay",
    "wet",
    "friction",
    "noise",
)
"""The order in which topics are read; any other comes after them."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Registered:
    """A file of figures: its slug, its topic, and the generator of its lines."""

    slug: str
    topic: str
    figures: Callable[[Job], Iterator[Line]]


@cache
def all_figures() -> tuple[Registered, ...]:
    """Every file of figures, in the order of topic and slug."""
    found = walk_packages(figures.__path__, f"{figures.__name__}.")
    names = sorted(each.name for each in found if not each.ispkg)
    return tuple(sorted((_registered(name) for name in names), key=_order))


def _order(each: Registered) -> int:
    return TOPICS.index(each.topic) if each.topic in TOPICS else len(TOPICS)


def _registered(name: str) -> Registered:
    *_, topic, stem = name.split(".")
    module = import_module(name)
    return Registered(slug=stem.replace("_", "-"), topic=topic, figures=module.figures)
