"""Data against the schema, the value grammar and its own references: every fault, in one pass."""

from __future__ import annotations

from collections.abc import Iterator
from functools import cache
from typing import Any

from specwriter.diagnostic import Fault, Place
from specwriter.quantity import ValueFault
from specwriter.source.compose import Composer
from specwriter.source.schema import leaves, schema
from specwriter.source.sentences import Said, sentences
from specwriter.source.source import LINE_BREAK, nearest
from specwriter.source.suggest import meant_key, similar
from specwriter.source.values import check_value


def check(found: Composer) -> list[Fault]:
    """The faults of what was composed, apart from those already known to the composer."""
    said: dict[str, Said] = {}
    for one in _all(found.data):
        kept = said.get(one.path)
        if kept is None or one.rank < kept.rank:
            said[one.path] = one
    return [_located(one, found) for one in said.values() if not _follows(one, said, found.refused)]


def _all(data: dict[str, Any]) -> Iterator[Said]:
    for error in _validator().iter_errors(data):
        yield from sentences(error)
    yield from _pay_items(data)


@cache
def _validator() -> Any:
    # Imported here: it takes longer to load than everything else that reading a job needs.
    from jsonschema import Draft202012Validator, FormatChecker

    checker = FormatChecker(formats=())
    forms = {entry["format"] for _, entry in leaves() if "format" in entry}
    for form in forms:
        checker.checks(form, raises=ValueFault)(lambda value, form=form: check_value(value, form))
    return Draft202012Validator(schema(), format_checker=checker)


def _pay_items(data: dict[str, Any]) -> Iterator[Said]:
    """Pay items named by an area or by the residue must be there."""
    items = data.get("pay_items")
    if items is None and any(meant_key(key, ("pay_items",)) for key in data):
        return  # the misspelt key is said already
    known = list(items) if isinstance(items, dict) else []
    areas = data.get("areas")
    owners = (
        {f"areas.{key}": area for key, area in areas.items()} if isinstance(areas, dict) else {}
    )
    for path, owner in {**owners, "residue": data.get("residue")}.items():
        name = owner.get("pay_item") if isinstance(owner, dict) else None
        if isinstance(name, str) and name and name not in known:
            near = similar(name, known)
            todo = "add it there" if not known else f"names there: {', '.join(known)}"
            todo = f"did you mean '{near}'?" if near else todo
            says = f"'{name}' is not a name under 'pay_items'"
            yield Said(path=f"{path}.pay_item", says=says, todo=todo)


def _follows(one: Said, said: dict[str, Said], refused: set[str]) -> bool:
    """True when a fault at the same place or further up already says what is wrong."""
    path = one.path
    if path in refused:
        return True
    while path := path.rpartition(".")[0]:
        if path in refused or path in said:
            return True
    return False


def _located(one: Said, found: Composer) -> Fault:
    mark = nearest(found.keys if one.at_key else found.values, one.path)
    column, width = mark.column, mark.width
    if not one.at_key and mark.inside is not None:
        column += one.column + mark.inside
        width = mark.width if one.width is None else one.width
    line = LINE_BREAK.split(found.text)[mark.line - 1]
    hidden = one.empty and line[mark.column + mark.width :].lstrip().startswith("#")
    return Fault(
        place=Place(file=found.file, line=mark.line, column=column),
        says=one.says,
        todo="what begins with '#' is a comment: put it in quotes" if hidden else one.todo,
        width=max(width, 1),
    )
