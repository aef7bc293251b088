"""The settings of a house in a file of their own, which a job names under ``settings.file``.

The file holds the keys of ``settings``, at its left edge. What the job says itself goes before it.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

from specwriter.diagnostic import Fault
from specwriter.source.source import Mark, Source

_ROOT = "settings"
_FRAME = (
    "format: 1\n"
    "project: {title: House, agency: House}\n"
    "areas: {all: {texture: diamond_grinding, place: roadway}}\n"
    f"{_ROOT}:\n"
)
"""The smallest job around the settings, so that they are read and checked as in a job."""
_LINE = re.compile(r"\bline (\d+)")
"""Where a message names another line of the file."""
_LINES, _COLUMNS = _FRAME.count("\n"), 2


def with_house(job: Source, read: Callable[[Path], Source]) -> Source:
    """The job with the settings of the file that it names; the file's source when it has faults.

    ``read`` turns a path into a source; it is given, because this file opens nothing itself.
    """
    own = (job.data or {}).get(_ROOT)
    if job.faults or not isinstance(own, dict) or "file" not in own:
        return job
    house = read(Path(job.file).parent / str(own["file"]))
    if house.faults:
        return house
    borrowed = {**(house.data or {})[_ROOT], **own}
    return replace(job, data={**(job.data or {}), _ROOT: borrowed}, house=house)


def framed(text: str) -> str:
    """The text of a house file as the settings of a small job."""
    lines = (f"{' ' * _COLUMNS}{line}" if line.strip() else line for line in text.splitlines())
    return _FRAME + "\n".join(lines) + "\n"


def unframed(source: Source, text: str) -> Source:
    """The source of a framed text with the places of the file itself."""
    return replace(
        source,
        text=text,
        faults=tuple(map(_moved_fault, source.faults)),
        values={path: _moved(mark) for path, mark in source.values.items()},
        keys={path: _moved(mark) for path, mark in source.keys.items()},
    )


def _moved(mark: Mark) -> Mark:
    line, column = max(mark.line - _LINES, 1), max(mark.column - _COLUMNS, 1)
    return replace(mark, line=line, column=column)


def _moved_fault(fault: Fault) -> Fault:
    place = fault.place
    line, column = max(place.line - _LINES, 1), max(place.column - _COLUMNS, 1)
    says = _LINE.sub(lambda found: f"line {int(found[1]) - _LINES}", fault.says)
    return replace(fault, says=says, place=replace(place, line=line, column=column))
