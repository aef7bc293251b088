"""A register: what a table of it is called, its columns and its rows."""

from __future__ import annotations

from dataclasses import dataclass

NOT_STATED = "not stated"
"""Stands where the job says nothing, so that no cell is left to be guessed at."""

NO_ANSWER = "for information, no answer"
NOT_COUNTED = "not counted"


@dataclass(frozen=True, slots=True, kw_only=True)
class Register:
    """Rows of texts under named columns; no cell is empty."""

    name: str
    columns: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]

    def __post_init__(self) -> None:
        """Says of each empty cell that the job does not state it."""
        told = tuple(tuple(cell or NOT_STATED for cell in row) for row in self.rows)
        object.__setattr__(self, "rows", told)
