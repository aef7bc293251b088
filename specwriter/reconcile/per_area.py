"""Remembers what was found of an area, because many relations ask the same of it in a row."""

from __future__ import annotations

from collections.abc import Callable
from functools import wraps
from typing import TypeVar

from specwriter.model import Area, Job

Found = TypeVar("Found")


def per_area(function: Callable[[Job, Area], Found]) -> Callable[[Job, Area], Found]:
    """The function, asked once for each area in turn.

    Only the last area is kept, and known again by identity: a job is large to compare, and an
    answer must not outlive it.
    """
    last: list[tuple[Job, Area, Found]] = []

    @wraps(function)
    def asked(job: Job, area: Area) -> Found:
        if not last or last[0][0] is not job or last[0][1] is not area:
            last[:] = [(job, area, function(job, area))]
        return last[0][2]

    return asked
