"""A job file as it was read: its text, its data, where each value stands, and its faults."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from typing import Any

from specwriter.diagnostic import Fault, Place

LINE_BREAK = re.compile(r"\r\n|[\n\r]")


@dataclass(frozen=True, slots=True)
class Mark:
    """Where a key or a value stands in the text (line and column from 1)."""

    line: int
    column: int
    width: int = 1
    """Characters that it covers on its first line."""
    inside: int | None = None
    """Characters before the value's own first one (1 for a quote); ``None``: no columns inside."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Source:
    """What came of reading a job file; ``data`` is ``None`` when it could not be read at all.

    ``values`` and ``keys`` map a path to the mark of the value and of its key. ``data`` holds
    text, int, Decimal, bool, None, list and dict.
    """

    file: str
    text: str
    data: dict[str, Any] | None
    faults: tuple[Fault, ...]
    values: Mapping[str, Mark] = field(default_factory=dict, repr=False)
    keys: Mapping[str, Mark] = field(default_factory=dict, repr=False)
    house: Source | None = field(default=None, repr=False)
    """The file of house settings that the job names; its settings have their places there."""

    def place(self, path: str, offset: int = 0) -> Place:
        """Where the value at ``path`` stands, or its nearest ancestor that is there.

        A block of keys or a list on lines of its own stands where its key stands. ``offset``
        leads so many characters into a value that stands on one line.
        """
        if self.house and path not in self.values and path in self.house.values:
            return self.house.place(path, offset)
        mark = nearest(self.values, path)
        place = self._place(mark)
        if not offset or mark.inside is None or path not in self.values:
            return place
        return replace(place, column=place.column + mark.inside + offset)

    def key_place(self, path: str) -> Place:
        """Where the key of ``path`` stands (the item itself in a list), or of its ancestor."""
        return self._place(nearest(self.keys, path))

    def line(self, number: int) -> str:
        """The text of a line, counted from 1, without its line break; empty past the end."""
        lines = LINE_BREAK.split(self.text)
        return lines[number - 1] if 1 <= number <= len(lines) else ""

    def _place(self, mark: Mark) -> Place:
        return Place(file=self.file, line=mark.line, column=mark.column)


def nearest(marks: Mapping[str, Mark], path: str) -> Mark:
    """The mark of ``path`` or of its nearest ancestor; the file's beginning when there is none."""
    while path and path not in marks:
        path = path.rpartition(".")[0]
    return marks.get(path, Mark(1, 1))
