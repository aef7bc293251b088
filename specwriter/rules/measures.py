"""Every measure of an area with its name, for rules that look at how values are written."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, fields

from specwriter.diagnostic import Evidence
from specwriter.model import Node
from specwriter.model.build import key_of
from specwriter.model.labels import label_of
from specwriter.model.results import Test
from specwriter.quantity import Quantity
from specwriter.rules.rule import evidence


@dataclass(frozen=True, slots=True, kw_only=True)
class Measure:
    """A value of a noun; ``name`` is its way below the area, such as ``groove.width``."""

    node: Node
    field: str
    name: str
    value: Quantity

    @property
    def label(self) -> str:
        """The name in plain words."""
        return label_of(self.name)

    @property
    def evidence(self) -> Evidence:
        """The value as a requirement that a finding rests on."""
        return evidence(self.node, self.field, self.label)

    @property
    def system(self) -> str:
        """``us``, ``si``, or ``both`` for units that belong to both systems."""
        return self.value.unit.system


def measures(node: Node, way: str = "") -> Iterator[Measure]:
    """The values of a noun and of the nouns below it, without lists, tests and other documents."""
    for field in fields(node):
        value = getattr(node, field.name)
        name = f"{way}.{key_of(field)}" if way else key_of(field)
        if isinstance(value, Quantity):
            yield Measure(node=node, field=field.name, name=name, value=value)
        elif isinstance(value, Node) and not isinstance(value, Test):
            yield from measures(value, name)


def apart(left: Measure, right: Measure) -> bool:
    """True when one is written in US customary units and the other in metric ones."""
    return {left.system, right.system} == {"us", "si"}
