"""A formula as it is shown to a reader: its text, its source, and where it is valid."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True, kw_only=True)
class Formula:
    """``text`` in symbols and units, ``source`` with document and year, ``validity`` in words."""

    text: str
    source: str
    validity: str


GEOMETRY = "geometry"
ALWAYS = "always"


def identity(text: str) -> Formula:
    """An identity of geometry or arithmetic, which needs no source and holds always."""
    return Formula(text=text, source=GEOMETRY, validity=ALWAYS)


def arithmetic(text: str) -> Formula:
    """Plain arithmetic, which holds always."""
    return Formula(text=text, source="arithmetic", validity=ALWAYS)
