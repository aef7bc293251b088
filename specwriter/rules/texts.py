"""The free texts of a job: what its writer says in words and no value can say."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass, fields
from typing import Any, TypeVar

from specwriter.diagnostic import Evidence
from specwriter.model import Area, Job, Node
from specwriter.model.area import Statement
from specwriter.model.build import hints, key_of
from specwriter.model.conditions import WorkWindow
from specwriter.model.contract import Accepted, PayItem, Residue
from specwriter.model.project import Project
from specwriter.model.results import Friction, Test, TextureDepth
from specwriter.model.settings import Settings

N = TypeVar("N", bound=Node)

_NAMES: dict[type[Any], tuple[str, ...]] = {
    Area: ("id", "pay_item"),
    Friction: ("measure",),
    PayItem: ("id", "number", "unit"),
    Residue: ("pay_item",),
    Statement: ("document",),
    Test: ("edition",),
    TextureDepth: ("edition",),
}
"""Fields that hold a name, a number or a unit: words of a person, but no sentence."""

_WITHOUT_TEXTS = (Accepted, Project, Settings, WorkWindow)


@dataclass(frozen=True, slots=True, kw_only=True)
class Text:
    """One free text; ``label`` is its key in plain words, ``area`` the area it stands in."""

    path: str
    label: str
    words: str

    @property
    def area(self) -> str | None:
        """The id of the area, for texts below ``areas``."""
        parts = self.path.split(".")
        return parts[1] if parts[0] == "areas" else None

    def evidence(self, start: int = 0) -> Evidence:
        """The text as a requirement that a finding rests on; ``start`` is where it matters."""
        return Evidence(path=self.path, label=self.label, written=self.words, offset=start)


def texts(job: Job) -> Iterator[Text]:
    """Every free text of the job, in the order of the model."""
    return (text for text, is_sentence in _below(job) if is_sentence)


def entries(job: Job) -> Iterator[Text]:
    """The free texts, and every name, number, date and edition that a person wrote."""
    return (text for text, _ in _below(job))


def matches(job: Job, pattern: re.Pattern[str], *, names: bool = False) -> list[Evidence]:
    """Each text (or entry, with ``names``) that holds the pattern, with its first place in it."""
    some = entries(job) if names else texts(job)
    found = ((text, pattern.search(text.words)) for text in some)
    return [text.evidence(match.start()) for text, match in found if match]


def nodes(value: Any, kind: type[N]) -> Iterator[N]:
    """Every noun of a kind in a job or below a noun, in the order of the model."""
    if isinstance(value, kind):
        yield value
    if isinstance(value, Node):
        for field in fields(value):
            yield from nodes(getattr(value, field.name), kind)
    elif isinstance(value, dict | tuple):
        for each in value.values() if isinstance(value, dict) else value:
            yield from nodes(each, kind)


_Entry = tuple[Text, bool]
"""What a person wrote, and whether it is free text."""


def _below(value: Any, path: str = "", label: str = "", free: bool = True) -> Iterator[_Entry]:
    if isinstance(value, str):
        yield Text(path=path, label=label, words=value), free
    elif isinstance(value, dict):
        for each in value.values():
            yield from _below(each, free=free)
    elif isinstance(value, tuple):
        for index, each in enumerate(value):
            yield from _below(each, f"{path}.{index}", label, free)
    elif isinstance(value, Node):
        yield from _of_node(value, free and not isinstance(value, _WITHOUT_TEXTS))


def _of_node(node: Node, free: bool) -> Iterator[_Entry]:
    kind_of_node: Any = type(node)
    kinds = hints(kind_of_node)
    for field in fields(node):
        value, kind = getattr(node, field.name), kinds[field.name]
        if field.name == "path" or (isinstance(value, str) and kind is not str):
            continue
        sentence = free and field.name not in _NAMES.get(kind_of_node, ())
        key = key_of(field)
        yield from _below(value, node.path_to(key), key.replace("_", " "), sentence)
