"""The outline of a house format: its parts in order, and how parts and clauses are numbered."""

from __future__ import annotations

from dataclasses import dataclass

import yaml

from specwriter.assemble.front_matter import FrontError, fault_at, fault_on, read_mapping
from specwriter.diagnostic import Fault

_KEYS = ("part_number", "clause_number", "not_used", "parts")


@dataclass(frozen=True, slots=True, kw_only=True)
class OutlinePart:
    """A part of the format; clauses name it by ``id``."""

    id: str
    title: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Outline:
    """A house format.

    ``part_number`` and ``clause_number`` are patterns with ``{part}`` and ``{clause}``.
    ``not_used`` is the title of the one clause of a part without clauses: the part stays, so
    that the numbers of the parts behind it never shift.
    """

    parts: tuple[OutlinePart, ...]
    part_number: str = "{part}"
    clause_number: str = "{part}.{clause}"
    not_used: str = "Not used"

    def number_of(self, part: int, clause: int | None = None) -> str:
        """The number of a part, or of a clause in it; both count from 1."""
        pattern = self.part_number if clause is None else self.clause_number
        return pattern.replace("{part}", str(part)).replace("{clause}", str(clause))


NO_OUTLINE = Outline(parts=())


def read_outline(text: str, file: str) -> tuple[Outline, list[Fault]]:
    """The default format of an outline file, with every fault found in it."""
    try:
        root = read_mapping(text, file)
        name = _scalar(_get(root, "default", file), file)
        chosen = _mapping(_get(_mapping(_get(root, "formats", file), file), name, file), file)
        return _format(chosen, file), []
    except FrontError as error:
        return NO_OUTLINE, [error.fault]


def _format(node: yaml.MappingNode, file: str) -> Outline:
    for key, _ in node.value:
        if key.value not in _KEYS:
            todo = f"known: {', '.join(_KEYS)}"
            raise FrontError(fault_on(key, file, f"'{key.value}' is not a key here", todo))
    listed = _get(node, "parts", file)
    if not isinstance(listed, yaml.SequenceNode) or not listed.value:
        raise FrontError(fault_on(listed, file, "'parts' needs a list", "list the parts in order"))
    return Outline(
        parts=tuple(_part(_mapping(item, file), file) for item in listed.value),
        part_number=_scalar(_get(node, "part_number", file), file),
        clause_number=_scalar(_get(node, "clause_number", file), file),
        not_used=_scalar(_get(node, "not_used", file), file),
    )


def _part(node: yaml.MappingNode, file: str) -> OutlinePart:
    return OutlinePart(
        id=_scalar(_get(node, "id", file), file), title=_scalar(_get(node, "title", file), file)
    )


def _get(node: yaml.MappingNode, key: str, file: str) -> yaml.Node:
    for name, value in node.value:
        if name.value == key:
            return value  # type: ignore[no-any-return]
    line = node.start_mark.line + 1
    raise FrontError(fault_at(file, line, 1, f"'{key}' is missing here", f"add {key}: ..."))


def _scalar(node: yaml.Node, file: str) -> str:
    if isinstance(node, yaml.ScalarNode) and node.value:
        return str(node.value)
    raise FrontError(fault_on(node, file, "a text is needed here", "write it after the colon"))


def _mapping(node: yaml.Node, file: str) -> yaml.MappingNode:
    if isinstance(node, yaml.MappingNode):
        return node
    raise FrontError(fault_on(node, file, "keys are needed here", "write key: value"))
