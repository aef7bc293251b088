"""What the exit code of a command means; the README gives the same table."""

from __future__ import annotations

from collections.abc import Iterable

OK = 0
"""Nothing at or above the grade asked for."""

FOUND = 1
"""Findings, or differences when they were asked for; a draft refused because of conflicts."""

USAGE = 2
"""The command line is wrong, or a file cannot be opened or written."""

UNREADABLE = 3
"""The file was opened and cannot be read as a job."""

DEFECT = 70
"""A defect of this program; what could still be done was done."""

_MOST_SERIOUS_FIRST = (DEFECT, USAGE, UNREADABLE, FOUND, OK)


def worst(codes: Iterable[int]) -> int:
    """The code that a run over several files ends with."""
    found = set(codes)
    return next((code for code in _MOST_SERIOUS_FIRST if code in found), OK)
