"""A job file, or text, → ``Source``; whatever is wrong with it becomes located faults."""

from __future__ import annotations

from pathlib import Path

from specwriter.diagnostic import Fault, Place
from specwriter.source.check import check
from specwriter.source.compose import Composer
from specwriter.source.house import framed, unframed, with_house
from specwriter.source.source import Mark, Source, nearest
from specwriter.source.text import LARGEST, clean, decode, too_large

JOB_FILE = "job.yaml"


def read_source(path: Path, name: str = "") -> Source:
    """Read a job file, and the file of house settings that it names, if it names one.

    ``name`` is what places carry, and beside which house settings are looked for, where a copy of
    the file is read. Never raises: a file that cannot be read has one fault that says why.
    """
    return with_house(_read(path, name), lambda house: _read(house, as_house=True))


def read_carried(text: str, file: str, settings: str | None) -> Source:
    """A job as text, with the text of the file of house settings that it names."""
    job = read_text(text, file)
    if settings is None:
        return job
    return with_house(job, lambda house: _house(settings, f"{file} ({house.name} inside)"))


def _read(path: Path, name: str = "", *, as_house: bool = False) -> Source:
    file = name or str(path)
    try:
        with path.open("rb") as stream:
            text = decode(stream.read(LARGEST + 1), file)
    except (OSError, ValueError) as error:
        text = _unreadable(path, error)
    if isinstance(text, Fault):
        return _unread(file, "", text)
    return _house(text, file) if as_house else read_text(text, file)


def _house(text: str, file: str) -> Source:
    return unframed(read_text(framed(text), file), text)


def read_text(text: str, file: str) -> Source:
    """Read the text of a job file; ``file`` is the name that places carry. Never raises."""
    if len(text) > LARGEST:
        return _unread(file, text, too_large(file))
    readable, unseen = clean(text, file)
    found = Composer(file, readable).read()
    lines = {fault.place.line for fault in unseen}
    faults = [fault for fault in found.faults if fault.place.line not in lines]
    usable = found.complete and isinstance(found.data, dict)
    if usable:
        faults += [fault for fault in check(found) if fault.place.line not in lines]
    elif not faults and not unseen:
        faults = [_shape(found)]
    return Source(
        file=file,
        text=text,
        data=found.data if usable else None,
        faults=tuple(sorted((*unseen, *faults), key=_place)),
        values=found.values,
        keys=found.keys,
    )


def _place(fault: Fault) -> tuple[int, int]:
    return fault.place.line, fault.place.column


def _shape(found: Composer) -> Fault:
    """Why the text as a whole is no job."""
    todo = "start from a file that 'specwriter new' makes"
    if found.empty:
        says = "this file holds only comments" if "#" in found.text else "this file is empty"
    else:
        kind = "a list" if isinstance(found.data, list) else "running text"
        says = f"this file holds {kind}; a job file holds keys, beginning with 'format: 1'"
    mark = Mark(1, 1) if found.empty else nearest(found.values, "")
    place = Place(file=found.file, line=mark.line, column=mark.column)
    return Fault(place=place, says=says, todo=todo)


def _unreadable(path: Path, error: Exception) -> Fault:
    place = Place(file=str(path), line=1, column=1)
    if isinstance(error, FileNotFoundError):
        says, todo = "there is no such file", "check the name and the folder"
    elif isinstance(error, IsADirectoryError):
        says, todo = "this is a folder, not a job file", "give the job file in it"
        if (path / JOB_FILE).is_file():
            todo += f": {path / JOB_FILE}"
    elif isinstance(error, PermissionError):
        says, todo = "this file may not be read", "ask for the right to read it, or copy it"
    else:
        reason = getattr(error, "strerror", None) or "its name cannot be used"
        says, todo = f"this file cannot be read: {reason}", "check the name and the folder"
    return Fault(place=place, says=says, todo=todo)


def _unread(file: str, text: str, fault: Fault) -> Source:
    return Source(file=file, text=text, data=None, faults=(fault,))
