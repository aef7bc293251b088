"""Single values: quantities by the grammar, days of the calendar, times of day."""

from __future__ import annotations

import re
from datetime import date
from decimal import Decimal
from typing import Any

from specwriter.quantity import DIMENSIONS, UNITS, Quantity, ValueFault, parse

_DASH = re.compile(r"([^+±]*\d[^+±]*?)(?:\s+-\s+|\s*[–—]\s*)(\d[^+±]*)")
_DASH_BETWEEN_DECIMALS = re.compile(r"(\d*\.\d+)-(\d*\.\d+.*)")
_MAY_BE_NEGATIVE = ("temperature", "slope", "money", "percent", "angle")


def dimensions(form: str) -> tuple[str, ...]:
    """The kinds of quantity that a format of the schema names: ``roughness or length`` has two."""
    return tuple(form.split(" or "))


def written(value: Any) -> str:
    """A scalar as it stands in the file."""
    if isinstance(value, bool):
        return str(value).lower()
    return format(value, "f") if isinstance(value, Decimal) else str(value)


def check_value(value: Any, form: str) -> bool:
    """True when a scalar is written as ``form`` asks; raises ``ValueFault`` when it is not."""
    if isinstance(value, bool) or not isinstance(value, str | int | Decimal):
        return True  # the schema's type says what is wrong
    text = written(value)
    if form == "date":
        _check_date(text)
    elif form == "time-of-day":
        _check_time(text)
    else:
        _check_quantity(text, dimensions(form))
    return True


def _check_date(text: str) -> None:
    todo = "write year, month and day, such as 2027-02-01"
    match = re.fullmatch(r"(\d{4})([-/. ]?)(\d\d?)\2(\d\d?)", text)
    if match is None or not (match[2] or len(text) == len("20270201")):
        raise ValueFault(f"'{text}' is not a date", 0, len(text), todo)
    try:
        day = date(int(match[1]), int(match[3]), int(match[4]))
    except ValueError:
        says = f"'{text}' is not a day of the calendar"
        raise ValueFault(says, 0, len(text), todo) from None
    if str(day) != text:
        raise ValueFault(f"'{text}' is not written as a date", 0, len(text), f"write {day}")


def _check_time(text: str) -> None:
    if not re.fullmatch(r"(?:[01][0-9]|2[0-3]):[0-5][0-9]|24:00", text):
        todo = "write hours and minutes of a 24-hour day, such as 21:00"
        raise ValueFault(f"'{text}' is not a time of day", 0, len(text), todo)


def _check_quantity(text: str, kinds: tuple[str, ...]) -> None:
    _refuse_look_alikes(text, kinds)
    try:
        quantity = parse(text, kinds[0] if len(kinds) == 1 else None)
    except ValueFault as fault:
        raise _better(fault, text, kinds) from None
    found = {amount.unit.dimension for amount in quantity.amounts}
    if len(kinds) > 1 and not found & set(kinds):
        bare = found == {"number"}
        says = f"'{text}' has no unit" if bare else f"'{text}' is {_name(found.pop())}"
        raise ValueFault(says, 0, len(text), f"write {wanted(kinds)}")
    _check_order(text, quantity)


def _check_order(text: str, quantity: Quantity) -> None:
    first = quantity.amounts[0]
    if first.value < 0 and first.unit.dimension not in _MAY_BE_NEGATIVE:
        raise ValueFault(f"'{text}' is below zero", 0, len(text), "write it without the minus sign")
    if quantity.form == "range" and quantity.amounts[1].base < first.base:
        says = f"'{text}' runs from the larger value to the smaller"
        raise ValueFault(says, 0, len(text), "write the smaller value first")


def _better(fault: ValueFault, text: str, kinds: tuple[str, ...]) -> ValueFault:
    """The fault with what to do about it, where what is wanted here is known to tell more."""
    if kinds == ("station",) and "+" in text:
        says = f"'{text}' is not a station"
        return ValueFault(says, 0, len(text), f"write {wanted(kinds)}")
    if dash := _DASH.fullmatch(text) or _DASH_BETWEEN_DECIMALS.fullmatch(text):
        todo = f"write '{dash[1]} to {dash[2]}'"
        return ValueFault(f"'{text}' does not say what the dash means", 0, len(text), todo)
    suggested = re.fullmatch(r"did you mean '(.+)'\?", fault.todo)
    unit = UNITS.get(suggested[1]) if suggested else None
    if not fault.todo or (unit is not None and unit.dimension not in kinds):
        return ValueFault(fault.says, fault.column, fault.width, f"write {wanted(kinds)}")
    return fault


def _refuse_look_alikes(text: str, kinds: tuple[str, ...]) -> None:
    """Writings that other programs turn into something else; here they are plainly refused."""
    for number in re.finditer(r"\d+(?:,\d+)+", text):
        if not re.fullmatch(r"\d{1,3}(?:,\d{3})+", number[0]):
            says = f"'{number[0]}' has a comma in it"
            todo = f"write {number[0].replace(',', '.')}, or a space behind the comma of a list"
            raise ValueFault(says, number.start(), len(number[0]), todo)
    says = ""
    if re.fullmatch(r"\d{1,2}:\d\d(:\d\d)?", text) and "slope" not in kinds:
        says = f"'{text}' is a time of day"
    elif re.fullmatch(r"\d{4}-\d\d-\d\d", text):
        says = f"'{text}' is a date"
    elif re.match(r"[-+]?\d+(\.\d+)?[eE][-+]?\d+", text):
        says = f"'{text}' is written with a power of ten"
    elif text.lower() in ("yes", "no", "on", "off", "tbd", "n/a", "none"):
        says = f"'{text}' is not a value"
    if says:
        raise ValueFault(says, 0, len(text), f"write {wanted(kinds)}, or leave the key out")


def wanted(kinds: tuple[str, ...]) -> str:
    """The kinds of quantity in words, with examples; three at most."""
    return ", or ".join(DIMENSIONS[kind] for kind in kinds[:3])


def _name(kind: str) -> str:
    return DIMENSIONS[kind].split(", such as")[0]
