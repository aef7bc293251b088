"""Jobs that everybody's tests start from, and a way to change one value in them.

``jobs/`` holds the smallest job of each texture: sound as far as it goes, with most things left
open. ``complete/`` holds a job of each texture in which nothing is left open, ``clean/`` contracts
in the habits of other agencies that raise nothing either.

::

    job("longitudinal_grooving")                                    # holds together
    job("complete/longitudinal_grooving")                           # raises no finding
    job("longitudinal_grooving", {"areas.mainline.land.width": "1/2 in"})
    patched(text_of("runway_grooving"), {"areas.runway.groove.depth": None})
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from pathlib import Path
from typing import Any

import yaml

from specwriter.model import Job, build_job

JOBS = Path(__file__).parent / "jobs"
EXAMPLES = Path(__file__).parents[2] / "examples"
SUPPORT = Path(__file__).parent
TEXTURES = tuple(sorted(path.stem for path in JOBS.glob("*.yaml")))


def text_of(name: str) -> str:
    """The text of a small job (its texture), a complete one, or an example (its folder)."""
    ours = (folder / f"{name}.yaml" for folder in (JOBS, SUPPORT))
    found = next((path for path in ours if path.exists()), EXAMPLES / name / "job.yaml")
    return found.read_text("utf-8")


def job(name: str, patches: Mapping[str, Any] | None = None) -> Job:
    """The job of that name, with the values at some paths replaced (``None`` removes)."""
    return build_job(_load(patched(text_of(name), patches or {})))


def patched(text: str, patches: Mapping[str, Any]) -> str:
    """The YAML text with values set at dotted paths; ``None`` takes the key or item out.

    Missing keys on the way are made; a whole number steps into a list, and the number one past
    the end adds an item. Comments and layout of ``text`` are not kept.
    """
    if not patches:
        return text
    data = _load(text)
    for path, value in patches.items():
        *way, last = path.split(".")
        owner = data
        for key in way:
            owner = owner[int(key)] if isinstance(owner, list) else owner.setdefault(key, {})
        _set(owner, last, value)
    return yaml.dump(data, Dumper=_Writer, sort_keys=False, allow_unicode=True, width=1000)


def _set(owner: Any, key: str, value: Any) -> None:
    if isinstance(owner, dict):
        owner.pop(key, None) if value is None else owner.update({key: value})
    elif value is None:
        del owner[int(key)]
    elif int(key) == len(owner):
        owner.append(value)
    else:
        owner[int(key)] = value


class _Reader(yaml.SafeLoader):
    """Types nothing but null, true, false and whole numbers: the rest stays as written."""

    yaml_implicit_resolvers: dict[str, Any] = {}  # noqa: RUF012


class _Writer(yaml.SafeDumper):
    """Writes no anchors, which a job file may not hold."""

    def ignore_aliases(self, data: Any) -> bool:
        return True


for _tag, _pattern in (
    ("null", r"null|~|"),
    ("bool", r"true|false"),
    ("int", r"-?(0|[1-9]\d*)"),
):
    _Reader.add_implicit_resolver(f"tag:yaml.org,2002:{_tag}", re.compile(f"(?:{_pattern})$"), None)


def _load(text: str) -> Any:
    return yaml.load(text, Loader=_Reader)
