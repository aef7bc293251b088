"""A register: what a table of it is called, its columns and its rows."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True, kw_only=True)
class Register:
    """Rows of texts under named columns; an absent value is an empty text."""

    name: str
    columns: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]
