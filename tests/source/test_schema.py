"""The published contract: described everywhere, without dead ends, and equal to the model."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import MISSING, fields
from typing import Any, Literal, get_args, get_origin

import jsonschema
import pytest

from specwriter.model.build import hints, key_of
from specwriter.model.job import Job
from specwriter.model.node import Node
from specwriter.quantity import DIMENSIONS, Quantity
from specwriter.source.check import _validator
from specwriter.source.schema import Route, entry, homes, leaves, route_of, schema, textures_of
from specwriter.source.values import dimensions

LEAVES = {".".join(route): here for route, here in leaves() if route[-1] != "*"}
LIKE_TEXT = ("date", "time-of-day")


def nodes(node: Any) -> Iterator[dict[str, Any]]:
    if isinstance(node, dict):
        yield node
        for below in node.values():
            yield from nodes(below)
    elif isinstance(node, list):
        for below in node:
            yield from nodes(below)


def test_the_schema_is_a_valid_schema() -> None:
    jsonschema.Draft202012Validator.check_schema(schema())


def test_no_choice_between_alternatives_hides_the_real_fault() -> None:
    assert not [node for node in nodes(schema()) if {"oneOf", "anyOf"} & node.keys()]


def test_every_block_is_closed() -> None:
    open_blocks = [
        node
        for node in nodes(schema())
        if node.get("type") == "object" and node.get("additionalProperties", True) is True
    ]

    assert open_blocks == []


def test_every_key_has_a_description_and_examples_that_hold() -> None:
    for path, here in LEAVES.items():
        assert here["description"].endswith("."), path
        assert here["examples"], path
        validator = _validator().evolve(schema={**here, "$defs": schema()["$defs"]})
        for example in here["examples"]:
            assert [error.message for error in validator.iter_errors(example)] == [], path


def test_every_choice_of_words_has_a_noun_for_messages() -> None:
    assert not [path for path, here in LEAVES.items() if "enum" in here and "title" not in here]


def test_every_format_is_known() -> None:
    forms = {here["format"] for here in LEAVES.values() if "format" in here} - set(LIKE_TEXT)

    assert {kind for form in forms for kind in dimensions(form)} <= set(DIMENSIONS)


def test_all_five_textures_are_there() -> None:
    assert len(entry(("areas", "*", "texture"))["enum"]) == 5


@pytest.mark.parametrize(
    ("path", "textures"),
    [
        ("areas.a.flush_grind", {"next_generation_concrete_surface"}),
        ("areas.a.ridge", {"diamond_grinding", "next_generation_concrete_surface"}),
        ("areas.a.groove.width_at_bottom", {"runway_grooving"}),
        ("areas.a.groove.skew", {"transverse_grooving", "runway_grooving"}),
    ],
)
def test_some_keys_go_with_some_textures_only(path: str, textures: set[str]) -> None:
    assert set(textures_of(path)) == textures


def test_a_key_knows_its_homes() -> None:
    assert homes()["spacing"] == (("areas", "*", "groove"),)
    assert route_of("areas.mainline.limits.0.from") == ("areas", "*", "limits", "*", "from")


def _is_noun(hint: Any) -> bool:
    return isinstance(hint, type) and issubclass(hint, Node)


def of_the_model(kind: Any, route: Route = ()) -> Iterator[tuple[Route, Any, bool]]:
    """Every key of the model with its kind and whether it must be given."""
    for field in fields(kind):
        if field.name in ("path", "id"):
            continue
        hint, here = hints(kind)[field.name], (*route, key_of(field))
        yield here, hint, field.default is MISSING and field.default_factory is MISSING
        arguments = get_args(hint)
        if _is_noun(hint):
            yield from of_the_model(hint, here)
        elif get_origin(hint) is tuple and _is_noun(arguments[0]):
            yield from of_the_model(arguments[0], (*here, "*"))
        elif get_origin(hint) is dict:
            named = list(entry(here).get("properties", ())) or ["*"]
            for name in named:
                yield from of_the_model(arguments[1], (*here, name))


MODEL = {".".join(route): (hint, required) for route, hint, required in of_the_model(Job)}
NAMED_TESTS = {f"areas.*.testing.{name}" for name in entry(("areas", "*", "testing"))["properties"]}


def test_schema_and_model_hold_the_same_keys() -> None:
    in_schema = {".".join(route) for route, _ in leaves() if route[-1] != "*"}

    assert in_schema - NAMED_TESTS == set(MODEL)


def test_schema_and_model_agree_on_kinds() -> None:
    for path, (hint, _) in MODEL.items():
        assert _kinds_agree(hint, entry(tuple(path.split(".")))), path


def _kinds_agree(hint: Any, here: dict[str, Any]) -> bool:
    kinds = here["type"] if isinstance(here["type"], list) else [here["type"]]
    if hint is Quantity:
        return set(dimensions(here["format"])) <= set(DIMENSIONS)
    if get_origin(hint) is Literal:
        return tuple(here["enum"]) == get_args(hint)
    if hint is str:
        return "string" in kinds and here.get("format", LIKE_TEXT[0]) in LIKE_TEXT
    known = {bool: "boolean", int: "integer", tuple: "array"}
    return bool(kinds == [known.get(get_origin(hint) or hint, "object")])


def test_schema_and_model_agree_on_what_must_be_given() -> None:
    for path, (_, required) in MODEL.items():
        *owner, key = path.split(".")
        assert (key in entry(tuple(owner)).get("required", ())) == required, path


def test_numbers_in_the_schema_are_exact() -> None:
    assert not [node for node in nodes(schema()) for value in node.values() if type(value) is float]
