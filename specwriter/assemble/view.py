"""The job as clauses see it: every name of the model exists, and what is absent is marked.

Clauses read nouns by key only; no method of a Python object can be reached from a clause.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, fields, is_dataclass
from functools import cache
from typing import Any, get_args, get_origin

from specwriter.assemble.labels import area_name
from specwriter.model import Area, Job, Node, at_area
from specwriter.model.build import hints, key_of
from specwriter.model.conditions import Conditions
from specwriter.model.contract import PayItem
from specwriter.quantity import Quantity


class Text(str):
    """A text of the job, with the path at which it stands."""

    __slots__ = ("path",)
    path: str

    def __new__(cls, text: str, path: str) -> Text:
        """A text that remembers its path."""
        made = super().__new__(cls, text)
        made.path = path
        return made


@dataclass(frozen=True, slots=True)
class Value:
    """A quantity of the job, with the path at which it stands."""

    path: str
    quantity: Quantity


@dataclass(frozen=True, slots=True, eq=False)
class Missing:
    """A value that the job does not give: false in a condition, a blank in the text."""

    path: str

    def __bool__(self) -> bool:
        return False

    def __ne__(self, other: object) -> bool:
        # A comparison with an absent value is never true, so that no branch rests on it.
        return False


class Many(tuple[Any, ...]):
    """A list of the job; a key read from it is read from each of its members."""

    path: str

    def __new__(cls, items: Any, path: str) -> Many:
        """A list that remembers its path."""
        made = super().__new__(cls, items)
        made.path = path
        return made

    def read(self, key: str) -> Many:
        """The values under ``key`` of those members that have one."""
        found: list[Any] = []
        for item in self:
            value = item.read(key)
            found.extend(value if isinstance(value, Many) else [value] if value else [])
        return Many(found, f"{self.path}.{key}")


@dataclass(frozen=True, slots=True)
class View:
    """A noun of the job; ``node`` is ``None`` when the job does not have it."""

    kind: Any
    node: Node | None
    path: str
    job: Job
    absent: str = ""
    """The path to blame for whatever is missing, where it is not the value's own."""

    def __bool__(self) -> bool:
        return self.node is not None

    def read(self, key: str) -> Any:
        """What stands under a key of this noun."""
        name, hint = keys_of(self.kind)[key]
        value = None if self.node is None else getattr(self.node, name)
        path = self.node.path_to(key) if self.node else f"{self.path}.{key}"
        if key == "pay_item":
            return _pay_item(value, path, self.job)
        if self.kind is Area and key == "name" and self.node is not None:
            return Text(area_name(self.job, self.node.id), path)  # type: ignore[attr-defined]
        if isinstance(self.node, Area) and key == "conditions":
            # A clause is told what holds at the area, wherever the job says so.
            facts = at_area(self.job, self.node).conditions
            return View(Conditions, facts, facts.path, self.job)
        return _wrap(hint, value, path, self.job, self.absent)


@dataclass(frozen=True, slots=True)
class Keyed:
    """A mapping of the job from free keys to nouns of one kind, such as ``testing``."""

    kind: Any
    nodes: dict[str, Node]
    path: str
    job: Job

    def __bool__(self) -> bool:
        return bool(self.nodes)

    def __iter__(self) -> Iterator[View]:
        return (self.read(key) for key in self.nodes)

    def read(self, key: str) -> View:
        """The noun under a key, absent or not."""
        return View(self.kind, self.nodes.get(key), f"{self.path}.{key}", self.job)


@dataclass(frozen=True, slots=True)
class Figures:
    """The fixed figures of a clause, by name."""

    values: Mapping[str, str]

    def read(self, key: str) -> str:
        """The value of a figure."""
        return self.values[key]


def job_view(job: Job) -> View:
    """The whole job."""
    return View(Job, job, "", job)


def area_views(job: Job, textures: tuple[str, ...] = ()) -> Many:
    """The areas with one of the textures (all areas when none is named), in the job's order."""
    views = Many((View(Area, area, area.path, job) for area in job.areas.values()), "areas")
    return with_texture(views, textures)


def with_texture(areas: Many, textures: tuple[str, ...]) -> Many:
    """Those of some areas that have one of the textures; all when none is named."""
    if not textures:
        return areas
    return Many((view for view in areas if view.node.texture in textures), areas.path)


@cache
def keys_of(kind: Any) -> dict[str, tuple[str, Any]]:
    """Keys of a noun: key → (field name, type)."""
    resolved = hints(kind)
    return {
        key_of(field): (field.name, resolved[field.name])
        for field in fields(kind)
        if field.name != "path"
    }


def _pay_item(key: str | None, path: str, job: Job) -> View:
    item = job.pay_items.get(key) if key else None
    if item is None:
        return View(PayItem, None, path, job, absent=path)
    return View(PayItem, item, item.path, job)


def _wrap(hint: Any, value: Any, path: str, job: Job, absent: str) -> Any:
    shape, kind = _shape(hint)
    if shape == "many":
        items = value or ()
        return Many((_wrap(kind, v, f"{path}.{i}", job, "") for i, v in enumerate(items)), path)
    if shape == "keyed":
        return Keyed(kind, value or {}, path, job)
    if shape == "noun":
        return View(kind, value, path, job, absent)
    if value is None:
        return Missing(absent or path)
    if isinstance(value, Quantity):
        return Value(path, value)
    return Text(value, path) if isinstance(value, str) else value


@cache
def _shape(hint: Any) -> tuple[str, Any]:
    """Whether a type of the model is many things, a mapping, a noun or a plain value; of what."""
    origin = get_origin(hint)
    if origin is tuple:
        return "many", get_args(hint)[0]
    if origin is dict:
        return "keyed", get_args(hint)[1]
    return ("noun" if is_dataclass(hint) and hint is not Quantity else "plain"), hint
