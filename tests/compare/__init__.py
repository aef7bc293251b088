"""Jobs for comparisons: an example with some of its values replaced."""

from __future__ import annotations

from collections.abc import Mapping
from copy import deepcopy
from functools import cache
from typing import Any

from specwriter.model import Job, build_job
from specwriter.source import read_text
from tests.support import text_of


@cache
def _read(name: str) -> dict[str, Any]:
    data = read_text(text_of(name), f"{name}.yaml").data
    assert data is not None
    return data


def data_of(name: str) -> dict[str, Any]:
    """The data of a minimal job or an example; the caller may change it."""
    return deepcopy(_read(name))


def edition(name: str, patches: Mapping[str, Any] | None = None) -> Job:
    """The job with values set at dotted paths; ``None`` takes the key or list item out."""
    data = data_of(name)
    for path, value in (patches or {}).items():
        patch(data, path, value)
    return build_job(data)


def patch(data: dict[str, Any], path: str, value: Any) -> None:
    """Sets one value; missing mappings on the way are made."""
    *way, last = path.split(".")
    owner: Any = data
    for key in way:
        owner = owner[int(key)] if isinstance(owner, list) else owner.setdefault(key, {})
    if isinstance(owner, list):
        owner[int(last) : int(last) + 1] = [] if value is None else [value]
    elif value is None:
        owner.pop(last, None)
    else:
        owner[last] = value
