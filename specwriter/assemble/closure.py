"""Whether the document says everything that the job requires."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Sequence
from dataclasses import dataclass, field
from functools import cache
from typing import Any, Literal, get_args, get_origin

from specwriter.assemble.clause import LibraryClause
from specwriter.assemble.view import keys_of
from specwriter.model import Area, Job, Node
from specwriter.model.contract import PayItem
from specwriter.quantity import Quantity

_NOT_REQUIREMENTS: dict[type[Any], tuple[str, ...]] = {
    Area: ("id", "texture", "place", "name", "conditions", "also_stated", "maintenance"),
    # Quantities and prices belong to the bid schedule, not to the text of the provision.
    PayItem: ("id", "quantity", "unit_price"),
}
_ROOTS = ("areas", "pay_items", "residue", "trial_section", "sequence", "submittals")


def unexpressed(
    job: Job, chosen: Collection[LibraryClause], printed: Collection[str]
) -> tuple[str, ...]:
    """Paths of requirements that no chosen clause states, in the order of the job.

    A quantity or a text must be declared by a clause *and* stand in the text; a fixed word or a
    yes/no need only be declared, because they steer the wording.
    """
    declared = _declared(tuple((clause.expresses, clause.textures) for clause in chosen))
    return tuple(
        path
        for path, spelled in requirements(job)
        if not _stated(declared, path, job) or (spelled and path not in printed)
    )


def expresses(clause: LibraryClause, path: str, job: Job) -> bool:
    """True when a clause declares that it states the value at ``path``."""
    return _stated(_declared(((clause.expresses, clause.textures),)), path, job)


def _stated(declared: _Keys, path: str, job: Job) -> bool:
    keys = path.split(".")
    texture = job.areas[keys[1]].texture if keys[0] == "areas" else None
    claims = _claims(declared, keys)
    return any(not texture or not textures or texture in textures for textures in claims)


def requirements(job: Job) -> Iterator[tuple[str, bool]]:
    """Every requirement of a job: its path, and whether its text must stand in the document."""
    for root in _ROOTS:
        yield from _leaves(keys_of(Job)[root][1], getattr(job, root), root)


def _leaves(hint: Any, value: Any, path: str) -> Iterator[tuple[str, bool]]:
    if value is None:
        return
    if isinstance(value, Node):
        kind: Any = type(value)
        skipped = _NOT_REQUIREMENTS.get(kind, ("id",))
        for key, (name, inner) in keys_of(kind).items():
            if key not in skipped:
                yield from _leaves(inner, getattr(value, name), f"{path}.{key}")
    elif isinstance(value, tuple):
        for index, item in enumerate(value):
            yield from _leaves(get_args(hint)[0], item, f"{path}.{index}")
    elif isinstance(value, dict):
        for key, item in value.items():
            yield from _leaves(get_args(hint)[1], item, f"{path}.{key}")
    else:
        yield path, _is_spelled(hint, path)


def _is_spelled(hint: Any, path: str) -> bool:
    if path.endswith(".pay_item") or get_origin(hint) is Literal:
        return False
    return hint is Quantity or hint is str


@dataclass(slots=True)
class _Keys:
    """What is declared below some keys, and the textures of each clause that declares all of it."""

    below: dict[str, _Keys] = field(default_factory=dict)
    claims: list[tuple[str, ...]] = field(default_factory=list)


@cache
def _declared(clauses: tuple[tuple[tuple[str, ...], tuple[str, ...]], ...]) -> _Keys:
    """The patterns and textures of clauses by the keys of the patterns."""
    root = _Keys()
    for patterns, textures in clauses:
        for pattern in patterns:
            keys = root
            for key in pattern.split("."):
                keys = keys.below.setdefault(key, _Keys())
            keys.claims.append(textures)
    return root


def _claims(declared: _Keys, keys: Sequence[str]) -> Iterator[tuple[str, ...]]:
    """The textures of every claim on a path that one of the patterns begins.

    ``*`` stands for any one key.
    """
    yield from declared.claims
    for key in (keys[0], "*") if keys else ():
        if key in declared.below:
            yield from _claims(declared.below[key], keys[1:])
