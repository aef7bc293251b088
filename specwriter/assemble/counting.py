"""Numbers as documents print them: digits, two digits, letters, Roman numerals."""

from __future__ import annotations

import re
from collections.abc import Mapping

FIELD = re.compile(r"\{([a-z]+)(?::(02|A|a|I|i))?\}")
"""A field of a numbering pattern: what is counted, and how it is written."""

_ROMAN = (
    *((100, "c"), (90, "xc"), (50, "l"), (40, "xl")),
    *((10, "x"), (9, "ix"), (5, "v"), (4, "iv"), (1, "i")),
)


def numeral(number: int, form: str = "") -> str:
    """A number from 1 up in one of the forms of ``FIELD``; digits when none is named."""
    match form:
        case "02":
            return f"{number:02}"
        case "a":
            return letters(number)
        case "A":
            return letters(number).upper()
        case "i":
            return roman(number)
        case "I":
            return roman(number).upper()
        case _:
            return str(number)


def counted(pattern: str, values: Mapping[str, int | str]) -> str:
    """A pattern with its fields filled; a field that ``values`` does not have stays."""

    def fill(found: re.Match[str]) -> str:
        value = values.get(found[1], found[0])
        return numeral(value, found[2] or "") if isinstance(value, int) else value

    return FIELD.sub(fill, pattern)


def letters(number: int) -> str:
    """1 → a, 26 → z, 27 → aa, 28 → bb: Word and its like double the letter past z."""
    times, place = divmod(number - 1, 26)
    return chr(ord("a") + place) * (times + 1)


def roman(number: int) -> str:
    """4 → iv."""
    text = ""
    for value, sign in _ROMAN:
        count, number = divmod(number, value)
        text += sign * count
    return text
