"""The values of a job, one by one: every noun of the model is walked the same way."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, fields
from typing import Any

from specwriter.model import Node
from specwriter.model.build import key_of
from specwriter.quantity import Quantity

Value = Quantity | str | bool | int


@dataclass(frozen=True, slots=True, kw_only=True)
class Leaf:
    """One value: where it stands, what it is, and the noun that owns it.

    ``owner`` is ``None`` for an item of a list of plain values.
    """

    path: str
    value: Value
    owner: Node | None = None

    @property
    def written(self) -> str:
        """The value as it stands in the job."""
        if isinstance(self.value, bool):
            return "true" if self.value else "false"
        return str(self.value).strip()


def entries(node: Node) -> dict[str, Any]:
    """The keys of a noun, as written in a job file, with what stands under them."""
    return {
        key_of(field): getattr(node, field.name)
        for field in fields(node)
        if field.name not in ("path", "id")
    }


def leaves(node: Node) -> Iterator[Leaf]:
    """Every value at or below a noun, in the order of the model."""
    for key, value in entries(node).items():
        yield from _leaves_of(value, node.path_to(key), node)


def _leaves_of(value: Any, path: str, owner: Node) -> Iterator[Leaf]:
    if isinstance(value, Node):
        yield from leaves(value)
    elif isinstance(value, dict):
        for key, item in value.items():
            yield from _leaves_of(item, f"{path}.{key}", owner)
    elif isinstance(value, tuple):
        for index, item in enumerate(value):
            yield from _leaves_of(item, f"{path}.{index}", owner)
    elif value is not None:
        yield Leaf(path=path, value=value, owner=owner)


def content(node: Node) -> dict[str, Value]:
    """What a noun says, without where it stands: its values by their path below it."""
    start = len(node.path) + 1 if node.path else 0
    return {leaf.path[start:]: leaf.value for leaf in leaves(node)}
