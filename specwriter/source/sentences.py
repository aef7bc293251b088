"""What the schema found → sentences about keys and values, without a word of schema in them."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from decimal import Decimal
from typing import Any

from specwriter.quantity import DIMENSIONS, ValueFault
from specwriter.source.schema import route_of, textures_of
from specwriter.source.suggest import about_key, known, meant_key, meant_words, plain
from specwriter.source.values import dimensions, written


@dataclass(frozen=True, slots=True, kw_only=True)
class Said:
    """A sentence about a path: at its key, or at its value from character ``column`` on."""

    path: str
    says: str
    todo: str
    at_key: bool = False
    column: int = 0
    width: int | None = None
    """Characters meant; ``None`` for the whole key or value."""
    rank: int = 1
    """Of several sentences about one path the lowest rank is kept."""
    empty: bool = False
    """The value is missing; perhaps it was taken for a comment."""


def sentences(error: Any) -> Iterator[Said]:
    """The sentences for one error of the schema validator."""
    path = ".".join(str(part) for part in error.absolute_path)
    steps = list(error.absolute_schema_path)
    if "propertyNames" in steps:
        yield _name(error, path)
    elif error.validator == "not":
        yield _other_texture(path)
    elif error.validator == "additionalProperties":
        yield from _unknown_keys(error, path)
    elif error.validator == "required":
        yield from _missing_keys(error, path)
    elif error.validator == "enum":
        yield _place_of_texture(error, path) if "then" in steps else _word(error, path)
    elif error.validator == "format":
        yield _value(error, path)
    elif error.validator == "type":
        yield from _kind(error, path)
    elif error.validator == "const":
        todo = f"write '{_last(path)}: {error.validator_value}'"
        says = f"'{error.instance}' is not a form of job file that is known here"
        yield Said(path=path, says=says, todo=todo)
    elif error.validator in ("minLength", "minItems", "minProperties"):
        yield _no_value(path)
    # "pattern" stands beside a format, which says the same with more care.


def _last(path: str) -> str:
    return path.rpartition(".")[2]


def _join(path: str, key: str) -> str:
    return f"{path}.{key}" if path else key


def _owner(path: str) -> str:
    owner, _, last = path.rpartition(".")
    if last.isdigit():
        return f"item {int(last) + 1} of '{_last(owner)}'"
    return f"'{last}'" if path else "the job file"


def _name(error: Any, path: str) -> Said:
    name = str(error.instance)
    better = plain(name)
    todo = "use letters, digits, '-' and '_', and begin with a letter"
    if re.match("[a-z]", better):
        todo += f", such as {better}"
    full = f"{path}.{name}"
    return Said(path=full, at_key=True, says=f"'{name}' cannot be a name", todo=todo, rank=0)


def _other_texture(path: str) -> Said:
    key, textures = _last(path), " or ".join(textures_of(path))
    says = f"'{key}' does not go with the texture of this area; it belongs to {textures}"
    return Said(
        path=path, at_key=True, says=says, todo="take it out, or change the texture", rank=0
    )


def _place_of_texture(error: Any, path: str) -> Said:
    words = " or ".join(error.validator_value)
    says = f"'{written(error.instance)}' is no place for runway_grooving"
    return Said(path=path, says=says, todo=f"write {words}, or choose another texture", rank=2)


def _unknown_keys(error: Any, path: str) -> Iterator[Said]:
    allowed = list(error.schema["properties"])
    before = ""
    cut: dict[str, str] = {}
    for key, value in error.instance.items():
        if key in allowed:
            before = key
        elif before and value is None and not re.fullmatch(r"[A-Za-z]\w*", key):
            comma = "," if key[0].isdigit() else ", "
            cut[before] = cut.get(before, written(error.instance[before])) + comma + key
        else:
            says = f"'{key}' is not a key of {_owner(path)}"
            todo = about_key(key, route_of(path), allowed)
            yield Said(path=_join(path, key), at_key=True, says=says, todo=todo)
    for key, whole in cut.items():
        yield _cut_at_comma(_join(path, key), written(error.instance[key]), whole)


def _cut_at_comma(path: str, value: str, whole: str) -> Said:
    """Inside braces a comma ends a value, so the rest of ``35,000 lb`` looks like a key."""
    says = f"'{value}' ends at the comma, because it stands in braces"
    todo = f'put quotes around the whole value: "{whole}"'
    return Said(path=path, says=says, todo=todo, rank=-1)


def _missing_keys(error: Any, path: str) -> Iterator[Said]:
    """Keys that must be there; one that is there under a wrong name is not said twice."""
    properties = error.schema["properties"]
    strange = [key for key in error.instance if key not in properties]
    meant = {meant_key(key, list(properties)) for key in strange}
    for key in error.validator_value:
        if key in error.instance or key in meant:
            continue
        what = str(properties[key]["description"]).split(".")[0]
        words = properties[key].get("enum")
        choice = f" ({', '.join(words)})" if words else ""
        todo = f"add '{key}': {what[0].lower()}{what[1:]}{choice}"
        says = f"{_owner(path)} has no '{key}'"
        # One path may miss several keys, so each is filed under the path of the missing key.
        yield Said(path=_join(path, key), at_key=True, says=says, todo=todo)


def _word(error: Any, path: str) -> Said:
    word, words = written(error.instance), [str(word) for word in error.validator_value]
    if error.instance is None:
        return _no_value(path)
    if isinstance(error.instance, dict | list):
        return _one_value(error.instance, path, f"write one of: {', '.join(words)}")
    noun = str(error.schema.get("title", _last(path)))
    article = "an" if noun[0] in "aeioI" else "a"
    meant = " or ".join(f"'{candidate}'" for candidate in meant_words(word, words))
    ask = f"did you mean {meant}? " if meant else ""
    says = f"'{word}' is not {article} {noun} that this file knows"
    return Said(path=path, says=says, todo=f"{ask}{known('words', words)}", rank=0)


def _value(error: Any, path: str) -> Said:
    fault: ValueFault = error.cause
    return Said(path=path, says=fault.says, todo=fault.todo, column=fault.column, width=fault.width)


def _no_value(path: str) -> Said:
    says = f"'{_last(path)}' has no value"
    todo = "write one, or take the key out"
    return Said(path=path, at_key=True, says=says, todo=todo, rank=0, empty=True)


def _one_value(instance: Any, path: str, todo: str) -> Said:
    found = "a block of keys" if isinstance(instance, dict) else "a list"
    says = f"'{_last(path)}' takes one value, not {found}"
    return Said(path=path, says=says, todo=todo, rank=0)


def _kind(error: Any, path: str) -> Iterator[Said]:
    wanted, instance = error.validator_value, error.instance
    scalar = isinstance(instance, str | int | Decimal) and not isinstance(instance, bool)
    if instance is None:
        yield _no_value(path)
    elif "format" in error.schema and scalar:
        return  # the format says it better
    elif wanted == "object":
        yield _block(error, path)
    elif wanted == "array":
        yield _list(instance, path)
    elif wanted == "boolean":
        yield _yes_or_no(instance, path)
    elif isinstance(instance, dict | list):
        form = error.schema.get("format", "")
        known_form = dimensions(form)[0] in DIMENSIONS if form else False
        todo = "write it as one text"
        if known_form:
            todo = f"write number and unit together: {DIMENSIONS[dimensions(form)[0]]}"
        yield _one_value(instance, path, todo)
    elif wanted == "integer":
        todo = f"write '{_last(path)}: {error.schema['const']}', without quotes"
        yield Said(path=path, says=f"'{instance}' is not a whole number", todo=todo, rank=0)
    elif "enum" not in error.schema:
        says = f"'{written(instance)}' is not a text"
        yield Said(path=path, says=says, todo=f'put it in quotes: "{written(instance)}"', rank=0)


def _block(error: Any, path: str) -> Said:
    instance, key = error.instance, _last(path)
    allowed = list(error.schema.get("properties", ()))
    if isinstance(instance, list):
        says = f"'{key}' takes keys of its own, not a list"
        todo = known("keys", allowed) if allowed else "give each entry a name instead of '- '"
        return Said(path=path, says=says, todo=todo, rank=0)
    text = written(instance)
    if match := re.match(r"([\w-]+):(\S.*)", text):
        says = f"there is no space behind '{match[1]}:'"
        return Said(
            path=path, says=says, todo=f"write '{match[1]}: {match[2]}'",
            column=len(match[1]), width=1, rank=0,
        )  # fmt: skip
    says = f"'{key}' takes keys of its own, not the value '{text}'"
    todo = known("keys", allowed) if allowed else "write a name and its keys on the lines below"
    return Said(path=path, says=says, todo=todo, rank=0)


def _list(instance: Any, path: str) -> Said:
    key = _last(path)
    if isinstance(instance, dict):
        says, todo = f"'{key}' takes a list, not keys", "begin each item with '- '"
    elif re.match(r"-\S", written(instance)):
        says, todo = f"there is no space behind the '-' in '{key}'", "begin each item with '- '"
    else:
        says = f"'{key}' takes a list, not one value"
        todo = f"write it in brackets: [{written(instance)}]"
    return Said(path=path, says=says, todo=todo, rank=0)


def _yes_or_no(instance: Any, path: str) -> Said:
    word = "" if isinstance(instance, dict | list) else written(instance).lower()
    todo = "write true or false"
    if word in ("yes", "on", "y", "true", "1"):
        todo = "write true, without quotes"
    elif word in ("no", "off", "n", "false", "0", "none"):
        todo = "write false, without quotes"
    shown = f"'{written(instance)}'" if word else "this"
    return Said(path=path, says=f"{shown} is neither true nor false", todo=todo, rank=0)
