"""Units of pay items: what they count, and the words that name them."""

from __future__ import annotations

import re

from specwriter.quantity import UNITS, Unit

_WORDS = {
    "SY": r"square yards?|sq\.? ?yds?\.?|SY|yd2|yd²",
    "SF": r"square (?:foot|feet)|sq\.? ?ft\.?|SF|ft2|ft²",
    "m2": r"square met(?:re|er)s?|sq\.? ?m|m2|m²",
    "ft": r"linear (?:foot|feet)|lin\.? ?ft\.?|LF|ft|foot|feet",
    "m": r"linear met(?:re|er)s?|lin\.? ?m|met(?:re|er)s?|m",
    "mi": r"(?:lane[- ])?miles?|mi",
    "km": r"(?:lane[- ])?kilomet(?:re|er)s?|km",
    "gal": r"gallons?|gal",
    "L": r"lit(?:re|er)s?|L",
    "CY": r"cubic yards?|CY",
    "m3": r"cubic met(?:re|er)s?|m3|m³",
    "ton": r"tons?",
    "t": r"tonnes?|t",
}
"""Symbol of a unit → the ways of writing it that agencies use (common practice, no source)."""

_KINDS = {
    "area": r"areas?",
    "length": r"lengths?",
    "volume": r"volumes?|tank ?loads?",
    "mass": r"mass|weight",
    "lump sum": r"lump[- ]sum",
    "each": r"numbers?|count",
}
_WHOLE = {symbol: re.compile(f"(?:{words})", re.IGNORECASE) for symbol, words in _WORDS.items()}
_NAMED = re.compile(
    r"\b(?:square (?:yards?|foot|feet|met(?:re|er)s?)|linear (?:foot|feet|met(?:re|er)s?)"
    r"|(?:lane[- ])?(?:miles?|kilomet(?:re|er)s?)|gallons?|cubic (?:yards?|met(?:re|er)s?)|tons?"
    r"|tonnes?)\b",
    re.IGNORECASE,
)


def pay_unit(text: str) -> Unit | None:
    """The unit of a pay item, if it counts something that can be measured; else ``None``."""
    for symbol, pattern in _WHOLE.items():
        if pattern.fullmatch(text.strip().rstrip(".")):
            return UNITS[symbol]
    return None


def is_lump_sum(text: str) -> bool:
    """True for an item that is paid as a whole."""
    return re.fullmatch(r"LS|L\.S\.|lump[- ]sum", text.strip(), re.IGNORECASE) is not None


def is_each(text: str) -> bool:
    """True for an item that is paid by the piece."""
    return re.fullmatch(r"EA|each|pieces?", text.strip().rstrip("."), re.IGNORECASE) is not None


def units_named(text: str) -> list[Unit]:
    """The units that a sentence names in full words, such as ``square yards``."""
    found = (pay_unit(match[0]) for match in _NAMED.finditer(text))
    return [unit for unit in found if unit is not None]


def kinds_named(text: str) -> set[str]:
    """What a sentence says is measured: area, length, volume, mass, a lump sum or pieces."""
    words = {
        kind for kind, pattern in _KINDS.items() if re.search(rf"\b(?:{pattern})\b", text, re.I)
    }
    return words | {unit.dimension for unit in units_named(text)}
