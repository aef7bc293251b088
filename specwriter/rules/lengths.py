"""Lengths that a text of the job names."""

from __future__ import annotations

import re
from collections.abc import Iterator

from specwriter.quantity import Quantity, ValueFault, parse

_LENGTH = re.compile(r"\d[\d,.]*(?: ?\d+/\d+)?[ -]?(?:miles?|mi|feet|foot|ft|km|m)\b")
_ONE = re.compile(r"\b(?:each|every|per|a|one|by the) (?:lane[ -])?(mile|kilomet(?:re|er))\b")


def lengths_in(text: str) -> Iterator[Quantity]:
    """Each length in feet, miles, metres or kilometres, in the order of the text."""
    for found in _LENGTH.findall(text):
        try:
            yield parse(found, "length")
        except ValueFault:
            continue
    for unit in _ONE.findall(text.lower()):
        yield parse("1 mi" if unit == "mile" else "1 km")
