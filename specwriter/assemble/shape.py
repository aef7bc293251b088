"""What kind of thing a name of the job is, known from the model without any job."""

from __future__ import annotations

from dataclasses import dataclass, field, is_dataclass
from typing import Any, Literal, get_args, get_origin

from specwriter.assemble.front_matter import nearest
from specwriter.assemble.view import keys_of
from specwriter.model import Job
from specwriter.model.contract import PayItem
from specwriter.quantity import Quantity

REGISTER_NAMES = (
    "limits_table",
    "requirement_table",
    "testing_table",
    "submittal_table",
    "pay_item_table",
    "texture_figure",
    "alternative_figure",
)


class ShapeError(ValueError):
    """A key that does not exist: what is wrong and what to do."""

    def __init__(self, says: str, todo: str) -> None:
        super().__init__(says)
        self.says = says
        self.todo = todo


@dataclass(frozen=True, slots=True)
class Shape:
    """``noun`` has keys, ``keyed`` has free keys, ``many`` is a list, the rest are values.

    ``path`` is where it stands in a job, with ``*`` for every member.
    """

    kind: Literal["noun", "keyed", "many", "text", "bool", "loop", "figures", "unknown"]
    type: Any = None
    inner: Shape | None = None
    path: str = field(default="", compare=False)

    @property
    def member(self) -> Shape:
        """What a loop over this gives."""
        return self.inner or Shape("unknown")

    def keys(self) -> list[str]:
        """The keys that can be read from it."""
        return list(keys_of(self.type)) if self.kind == "noun" else []

    def read(self, key: str) -> Shape:
        """The shape of what stands under a key; ``ShapeError`` if there is no such key."""
        match self.kind:
            case "unknown":
                return self
            case "keyed":
                return self.member
            case "many":
                read = self.member.read(key)
                return read if read.kind == "many" else Shape("many", inner=read, path=read.path)
            case "loop" if key in ("first", "last"):
                return BOOL
            case "figures":
                return self._figure(key)
            case "noun":
                return self._key(key)
        raise ShapeError(f"nothing can be read from this, so '.{key}' has no meaning", "drop it")

    def path_to(self, key: str) -> str:
        """The path of a key of this noun, or of each member of this list."""
        path = self.member.path if self.kind == "many" else self.path
        return f"{path}.{key}" if path else key

    def _figure(self, name: str) -> Shape:
        if name in self.type:
            return TEXT
        todo = f"add it under 'fixed'; there are: {', '.join(self.type) or 'none'}"
        raise ShapeError(f"the clause has no fixed figure '{name}'", todo)

    def _key(self, key: str) -> Shape:
        if key == "pay_item":
            return Shape("noun", PayItem, path="pay_items.*")
        known = keys_of(self.type)
        if key in known:
            return shape_of(known[key][1], self.path_to(key))
        raise ShapeError(f"the job has no '{key}' here", nearest(key, known))


TEXT, BOOL = Shape("text"), Shape("bool")


def shape_of(hint: Any, path: str = "") -> Shape:
    """The shape of a field of the model that stands at a path."""
    origin = get_origin(hint)
    if origin is tuple:
        return Shape("many", inner=shape_of(get_args(hint)[0], f"{path}.*"), path=path)
    if origin is dict:
        return Shape("keyed", inner=shape_of(get_args(hint)[1], f"{path}.*"), path=path)
    if is_dataclass(hint) and hint is not Quantity:
        return Shape("noun", hint, path=path)
    return Shape("bool" if hint is bool else "text", path=path)


def _base() -> dict[str, Shape]:
    job = Shape("noun", Job)
    single = ("project", "settings", "conditions", "residue", "trial_section", "sequence")
    names = {name: job.read(name) for name in single}
    for name in ("areas", "pay_items", "submittals"):
        names[name] = Shape("many", inner=job.read(name).member, path=name)
    names["all_areas"] = names["areas"]
    return names | dict.fromkeys(REGISTER_NAMES, TEXT)


BASE = _base()
"""Names that every clause knows."""


def check_path(pattern: str) -> None:
    """Raise ``ShapeError`` unless a path such as ``areas.*.groove.width`` can exist in a job."""
    shape = Shape("noun", Job)
    for key in pattern.split("."):
        if key == "pay_item":
            return
        if key == "*" and shape.kind in ("keyed", "many"):
            shape = shape.member
        elif shape.kind == "many":
            raise ShapeError(f"'{key}' stands after a list in '{pattern}'", "write * for each item")
        else:
            shape = shape.read(key)
