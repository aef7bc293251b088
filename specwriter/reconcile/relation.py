"""Relations: the ties that arithmetic, geometry and experience put between quantities.

A relation is one file under ``relations/<topic>/`` that holds ``RELATION = Relation(...)``, or
``RELATIONS`` for a family that differs in names only.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable
from dataclasses import dataclass, replace
from functools import cache
from typing import Literal

from specwriter.diagnostic import Basis
from specwriter.model import Area, Job
from specwriter.reconcile.shape import ANY, ZERO, Between, Box, Function, Linear, Reciprocal, Shape

__all__ = [
    "ANY",
    "ZERO",
    "Between",
    "Box",
    "Function",
    "Kind",
    "Linear",
    "Reciprocal",
    "Relation",
    "Shape",
    "basis_of",
]

Kind = Literal["exact", "model", "experience"]
"""How much a relation can prove.

``exact``: arithmetic or geometry; what it excludes is impossible. ``model``: a formula or a
computed response with its scatter; what it excludes is not to be expected, never impossible.
``experience``: what has been reported; likewise, and it assures nothing.
"""


_UNREAD = re.compile(r"memory, unverified|^common practice")
"""Marks a source that is no document in which the figure was read."""


def basis_of(relations: Iterable[Relation]) -> Basis:
    """What the relations rest on together: of those that do not prove, on the weakest."""
    found = {_basis(each) for each in relations}
    order: tuple[Basis, ...] = ("practice", "published")
    return next((each for each in order if each in found), "arithmetic")


def _basis(relation: Relation) -> Basis:
    """Published where all of it was read in documents, arithmetic where it was computed here."""
    if relation.kind == "exact":
        return "arithmetic"
    if any(_UNREAD.search(each) for each in relation.sources):
        return "practice"
    computed = all(each.startswith("project calculation") for each in relation.sources)
    return "arithmetic" if computed else "published"


def everywhere(job: Job, area: Area) -> bool:
    """A relation that holds in every area."""
    return True


def nowhere(job: Job, area: Area) -> str:
    """A relation that holds for every value."""
    return ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Unassured:
    """The finding that the dimensions allow a choice which fails the output of the relation."""

    slug: str
    title: str


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Relation:
    """One tie: its statement in words, its shape, its source and where it is valid.

    ``why`` says what a clash does on the road: common practice, no source.
    ``sentence`` puts the clash of single values into words: ``{groove_width}`` stands for what
    is written on ``groove.width`` and ``{found}`` for what the first variable would have to be;
    without one the report uses general words. Where ``about`` names variables, the relation has
    something to say only if one of them is stated. ``assures`` is given where the dimensions are
    expected to assure the output: the report then shows a choice that does not. ``optional`` are
    inputs that may be unknown there. ``nominal`` is given where the shape bounds the output on one
    side only: choices are then judged by the nominal shape, and nothing is called assured. ``ways``
    are given where moving one number to where it fits is not what settles a clash. ``aside`` says
    why a relation that would bear on the area does not hold for the values there; empty where it
    does. ``parts`` are the relations of which this one is the sum (see ``implied``).
    """

    slug: str
    title: str
    statement: str
    shape: Shape
    why: str
    source: str
    validity: str = "always"
    kind: Kind = "exact"
    sentence: str = ""
    applies: Callable[[Job, Area], bool] = everywhere
    about: tuple[str, ...] = ()
    assures: Unassured | None = None
    optional: tuple[str, ...] = ()
    nominal: Shape | None = None
    ways: tuple[str, ...] = ()
    aside: Callable[[Job, Area], str] = nowhere
    parts: tuple[Relation, ...] = ()
    family: str = ""
    """What relations that differ in numbers only state together, for their common page."""

    @property
    def variables(self) -> tuple[str, ...]:
        """The variables that the relation ties together."""
        return self.shape.variables

    @property
    def sources(self) -> tuple[str, ...]:
        """The sources one by one; ``source`` holds them with semicolons between."""
        return tuple(self.source.split("; "))

    @property
    def output(self) -> str:
        """The variable that the relation computes; the first one of a sum."""
        return self.shape.variables[0]


@cache
def as_judged(relation: Relation) -> Relation:
    """The relation as choices are judged by it."""
    return replace(relation, shape=relation.nominal) if relation.nominal else relation
