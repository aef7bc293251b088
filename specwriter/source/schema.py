"""The published contract of the job file, and what can be asked about it."""

from __future__ import annotations

import json
from collections.abc import Iterator
from decimal import Decimal
from functools import cache
from importlib.resources import files
from typing import Any

Route = tuple[str, ...]
"""Keys from the top of the file; ``*`` stands for a name of the writer's own or a list item."""


@cache
def schema() -> dict[str, Any]:
    """The JSON Schema (draft 2020-12) of a job file; numbers in it are exact."""
    text = files("specwriter.source").joinpath("schema.json").read_text("utf-8")
    loaded: dict[str, Any] = json.loads(text, parse_float=Decimal)
    return loaded


def resolve(node: dict[str, Any]) -> dict[str, Any]:
    """The node with its reference followed; what stands beside the reference counts too."""
    if "$ref" not in node:
        return node
    target = schema()
    for key in node["$ref"].removeprefix("#/").split("/"):
        target = target[key]
    target = resolve(target)
    return {**target, **{key: value for key, value in node.items() if key != "$ref"}}


def leaves(node: dict[str, Any] | None = None, route: Route = ()) -> Iterator[tuple[Route, Any]]:
    """Every key with its route and its (resolved) entry in the schema, owners before their keys."""
    here = resolve(node or schema())
    if route:
        yield route, here
    for key, below in here.get("properties", {}).items():
        yield from leaves(below, (*route, key))
    for keyword in ("additionalProperties", "items"):
        below = here.get(keyword)
        if isinstance(below, dict):
            yield from leaves(below, (*route, "*"))


@cache
def homes() -> dict[str, tuple[Route, ...]]:
    """For each key, the routes of the blocks that it belongs to.

    What other documents state (``also_stated``) and ``alternatives`` repeat the keys of the area,
    and the conditions of an area those of the contract: advice names the first.
    """
    found: dict[str, list[Route]] = {}
    for route, _ in leaves():
        if route[-1] != "*" and not _repeats(route):
            found.setdefault(route[-1], []).append(route[:-1])
    return {key: tuple(routes) for key, routes in found.items()}


def _repeats(route: Route) -> bool:
    return not {"also_stated", "alternatives"}.isdisjoint(route[:-2]) or (
        "areas" in route[:-2] and "conditions" in route[:-1]
    )


def entry(route: Route) -> dict[str, Any]:
    """The (resolved) schema at a route that exists in it."""
    here = resolve(schema())
    for key in route:
        if key in here.get("properties", {}):
            here = resolve(here["properties"][key])
        else:
            here = resolve(here["items"] if "items" in here else here["additionalProperties"])
    return here


def route_of(path: str) -> Route:
    """The route of a path: names of the writer's own and item numbers become ``*``."""
    here: dict[str, Any] = resolve(schema())
    route: list[str] = []
    for key in path.split(".") if path else ():
        below = here.get("properties", {}).get(key)
        if below is None:
            below = here.get("items", here.get("additionalProperties"))
            key = "*"
        route.append(key)
        here = resolve(below) if isinstance(below, dict) else {}
    return tuple(route)


def textures_of(path: str) -> tuple[str, ...]:
    """The textures that go with the key at ``path`` below an area, from the schema's conditions."""
    area = schema()["$defs"]["area"]
    every: list[str] = area["properties"]["texture"]["enum"]
    barred: set[str] = set()
    for condition in area["allOf"]:
        then = condition["then"]
        for key in path.split(".")[2:]:
            then = then.get("properties", {}).get(key, {})
        if "not" in then:
            barred.update(condition["if"]["properties"]["texture"]["enum"])
    return tuple(texture for texture in every if texture not in barred)
