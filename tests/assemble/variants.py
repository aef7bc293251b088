"""Jobs next to a job: each fixed word and yes/no changed, each value or noun left out, in turn."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from dataclasses import MISSING, fields, is_dataclass, replace
from typing import Any, Literal, get_args, get_origin

from specwriter.model import Job, Node
from specwriter.model.build import hints

_KEPT = ("path", "format", "project", "texture", "governing_units")


_ENTRY = re.compile(r"\b(submittals|pay_items|limits|bands)\.\w+")
_TEST = re.compile(r"areas\..*\b(?:testing\.\w+|test)\b")
_AREA = re.compile(r"\bareas\.(\w+)")
_BY_TEXTURE = ("conditions", "residue", "trial_section")


def around(jobs: Iterable[Job]) -> Iterator[tuple[str, Job]]:
    """The variants of several jobs, each kind of change once.

    A change of an area is tried once for its texture, a change of the site once for each set of
    textures, a change of a test or of an entry of a list once.
    """
    seen: set[str] = set()
    for job in jobs:
        for change, near in variants(job):
            kind = _kind(change, job)
            if kind not in seen:
                seen.add(kind)
                yield change, near


def _kind(change: str, job: Job) -> str:
    kind = _ENTRY.sub(r"\1.*", _TEST.sub("test", change))
    if change.startswith(_BY_TEXTURE):
        return f"{sorted({area.texture for area in job.areas.values()})} {kind}"
    return _AREA.sub(lambda found: job.areas[found[1]].texture, kind)


def variants(job: Job) -> Iterator[tuple[str, Job]]:
    """(what was changed, the changed job); ``project`` itself is kept, its keys vary."""
    yield from _node(job)
    for change, project in _node(job.project):
        yield change, replace(job, project=project)


def _node(node: Any) -> Iterator[tuple[str, Any]]:
    for field in fields(node):
        value = getattr(node, field.name)
        if field.name in _KEPT:
            continue
        if value and (field.default is None or field.default_factory is not MISSING):
            absent = None if field.default is None else field.default_factory()  # type: ignore[misc]
            yield f"{node.path}.{field.name} absent", replace(node, **{field.name: absent})
        for change, other in _value(
            hints(type(node))[field.name], value, f"{node.path}.{field.name}"
        ):
            yield change, replace(node, **{field.name: other})


def _value(hint: Any, value: Any, path: str) -> Iterator[tuple[str, Any]]:
    if hint is bool or get_origin(hint) is Literal:
        for other in (True, False) if hint is bool else get_args(hint):
            if other != value:
                yield f"{path} {other}", other
    elif isinstance(value, Node) and is_dataclass(value):
        yield from _node(value)
    elif isinstance(value, tuple):
        for index, item in enumerate(value):
            for change, other in _value(get_args(hint)[0], item, f"{path}.{index}"):
                yield change, (*value[:index], other, *value[index + 1 :])
    elif isinstance(value, dict):
        for key, item in value.items():
            for change, other in _value(get_args(hint)[1], item, f"{path}.{key}"):
                yield change, {**value, key: other}
