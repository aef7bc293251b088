"""The tables of meanings and names cover the model, and hold nothing that the model has not."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import fields
from typing import Any, get_args, get_origin

import pytest

from specwriter.compare.burden import RECORD
from specwriter.compare.change import Sense
from specwriter.compare.meaning import (
    MEANINGS,
    ORDERED_CHOICES,
    PRESENCE,
    canonical,
    lookup,
)
from specwriter.model import Area, Job, Node
from specwriter.model.build import hints, key_of

Key = tuple[str, ...]
WITHOUT_WEIGHT = {("format",), ("name",), ("also_stated",), ("also_stated", "in"), ("maintenance",)}
"""Keys that ask nothing of anybody, besides those of the project."""


def keys_of(kind: type[Node], above: Key = ()) -> Iterator[Key]:
    """Every key at or below a noun of the model, with the nouns themselves."""
    for field in fields(kind):
        if field.name in ("path", "id") or field.name == "areas":
            continue
        key, hint = (*above, key_of(field)), hints(kind)[field.name]
        below = next((each for each in (hint, *get_args(hint)) if is_noun(each)), None)
        if below is None or get_origin(hint) is not None:
            yield key
        if below is not None:
            yield from keys_of(below, key)


def is_noun(hint: Any) -> bool:
    return isinstance(hint, type) and issubclass(hint, Node)


KEYS = (*keys_of(Area), *keys_of(Job))
TAILS = {".".join(canonical(key)[start:]) for key in KEYS for start in range(len(key))}
NOUNS = {part for key in KEYS for part in canonical(key)}


def test_every_requirement_of_the_model_has_a_meaning() -> None:
    without = {key for key in KEYS if lookup(key).matter is RECORD and key[0] != "project"}

    assert without == WITHOUT_WEIGHT


@pytest.mark.parametrize("table", [MEANINGS, ORDERED_CHOICES, PRESENCE])
def test_no_row_speaks_of_what_the_model_has_not(table: dict[str, object]) -> None:
    assert set(table) - TAILS - NOUNS - {"area"} == set()


def test_every_matter_says_who_bears_every_sense() -> None:
    for meaning in MEANINGS.values():
        for sense in Sense:
            burden = meaning.matter.burden(sense)
            assert burden.because.endswith(".")
