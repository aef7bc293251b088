"""Data that the schema has accepted → a ``Job``; one generic reader for every noun."""

from __future__ import annotations

import types
from collections.abc import Mapping
from dataclasses import Field, fields, is_dataclass
from decimal import Decimal
from functools import cache
from typing import TYPE_CHECKING, Any, Literal, Union, get_args, get_origin, get_type_hints

from specwriter.model.job import Job
from specwriter.quantity import Quantity, parse

if TYPE_CHECKING:
    from _typeshed import DataclassInstance

    Noun = type[DataclassInstance]


def build_job(data: Mapping[str, Any]) -> Job:
    """The job held by ``data``, which must have passed the schema and the value grammar."""
    job = _build_node(Job, data, "", {})
    assert isinstance(job, Job)
    return job


def key_of(field: Field[Any]) -> str:
    """The key under which a field stands in the job file."""
    return str(field.metadata.get("key", field.name))


@cache
def hints(kind: Noun) -> dict[str, Any]:
    """Resolved type hints of a noun, without ``None``."""
    return {name: _without_none(hint) for name, hint in get_type_hints(kind).items()}


def _without_none(hint: Any) -> Any:
    if get_origin(hint) in (Union, types.UnionType):
        kinds = [kind for kind in get_args(hint) if kind is not type(None)]
        return kinds[0] if len(kinds) == 1 else hint
    return hint


def _build_node(kind: Noun, data: Mapping[str, Any], path: str, extra: dict[str, str]) -> Any:
    values: dict[str, Any] = {"path": path, **extra}
    for field in fields(kind):
        key = key_of(field)
        if field.name in ("path", "id") or data.get(key) is None:
            continue
        below = f"{path}.{key}" if path else key
        values[field.name] = _build_value(hints(kind)[field.name], data[key], below)
    return kind(**values)


def _build_value(kind: Any, data: Any, path: str) -> Any:
    origin, arguments = get_origin(kind), get_args(kind)
    if origin is tuple:
        return tuple(_build_value(arguments[0], item, f"{path}.{i}") for i, item in enumerate(data))
    if origin is dict:
        return {key: _build_entry(arguments[1], item, path, key) for key, item in data.items()}
    if kind is Quantity:
        return parse(_written(data))
    if isinstance(kind, type) and is_dataclass(kind):
        return _build_node(kind, data, path, {})
    if origin is Literal or kind is str:
        return _written(data)
    return data


def _written(data: Any) -> str:
    # str() turns small decimals into powers of ten.
    return format(data, "f") if isinstance(data, Decimal) else str(data)


def _build_entry(kind: Noun, data: Any, path: str, key: str) -> Any:
    named = any(field.name == "id" for field in fields(kind))
    return _build_node(kind, data, f"{path}.{key}", {"id": key} if named else {})
