"""Dimensions of the texture: one row a dimension, one column an area."""

from __future__ import annotations

from typing import Any

from specwriter.assemble.document import Table
from specwriter.assemble.labels import short_label, words
from specwriter.assemble.page import Page, Phrase, plain
from specwriter.assemble.registers.cells import NONE, Row, key, table, value
from specwriter.assemble.view import Many, View, keys_of
from specwriter.assemble.wording import in_words, written

_NOUNS = ("groove", "land", "ridge", "blade", "flush_grind")
_MOST_COLUMNS = 4
_ALWAYS = ("groove", "depth")
"""The dimension without which no texture can be cut; where it is absent, a blank stands."""


def requirement_table(areas: Many, page: Page) -> tuple[Table, ...]:
    """The depth, and every dimension that an area states; many areas get a row each."""
    stated = [(keys, [_read(area, keys) for area in areas]) for keys in _dimensions(areas)]
    names = [key(area, "name") for area in areas]
    rows: list[Row]
    if len(areas) <= _MOST_COLUMNS:
        header = ("Dimension", *(name.text for name in names))
        rows = [
            [_title(keys), *(_shown(keys, found, page) for found in values)]
            for keys, values in stated
        ]
    else:
        header = ("Dimension", "Area", "Requirement")
        rows = [
            [_title(keys), name, _shown(keys, found, page)]
            for keys, values in stated
            for name, found in zip(names, values, strict=True)
            if found or keys == _ALWAYS
        ]
    return (table(page, "requirement_table", "Dimensions", header, rows),)


def _dimensions(areas: Many) -> list[tuple[str, str]]:
    """(noun, key) of the depth and of what any area states, in the order of the model."""
    if not areas:
        return []
    kinds = {noun: keys_of(areas[0].kind)[noun][1] for noun in _NOUNS}
    pairs = [(noun, name) for noun, kind in kinds.items() for name in keys_of(kind)]
    return [p for p in pairs if p == _ALWAYS or any(_read(area, p) for area in areas)]


def _read(area: View, keys: tuple[str, str]) -> Any:
    return area.read(keys[0]).read(keys[1])


def _title(keys: tuple[str, str]) -> Phrase:
    text = short_label(f"areas.any.{keys[0]}.{keys[1]}")
    return plain(words(text)[0].upper() + words(text)[1:])


def _shown(keys: tuple[str, str], found: Any, page: Page) -> Phrase:
    if not found:
        return written(found) if keys == _ALWAYS else NONE
    return in_words(found) if isinstance(found, str) else value(found, page.job)
