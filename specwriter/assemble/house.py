"""Which house format and numbering a job asks for, and on which paper."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from difflib import get_close_matches
from typing import Literal

from specwriter.assemble.counting import counted
from specwriter.assemble.document import Numbering
from specwriter.assemble.library import Library
from specwriter.assemble.outline import Outline
from specwriter.model import Job


class HouseError(ValueError):
    """A setting of the job that the library cannot follow: where it stands, and what to do."""

    def __init__(self, path: str, says: str, todo: str) -> None:
        super().__init__(says)
        self.path = path
        self.says = says
        self.todo = todo


def house_format(job: Job, library: Library) -> Outline:
    """The format that the job names, else the usual one; raises ``HouseError``."""
    name = job.settings.house_format if job.settings else None
    if name is None:
        return library.outline
    outlines = library.formats.outlines
    if name not in outlines:
        path = "settings.house_format"
        raise HouseError(path, f"there is no house format '{name}'", _near(name, outlines))
    return outlines[name]


def house_numbering(job: Job, library: Library, outline: Outline) -> Numbering:
    """The numbering of the job or of its format, with the number of the section filled in."""
    own = job.settings.numbering if job.settings else None
    name = own or outline.numbering
    numberings = library.formats.numberings
    if name not in numberings:
        path = "settings.numbering" if own else "settings.house_format"
        raise HouseError(path, f"there is no numbering '{name}'", _near(name, numberings))
    base = job.project.base_section
    fixed = {
        "section": (base.number if base else None) or "[section]",
        "provision": job.project.provision or "[provision]",
    }
    found = numberings[name]
    return replace(found, part=counted(found.part, fixed), clause=counted(found.clause, fixed))


def paper(job: Job) -> Literal["letter", "a4"]:
    """The paper that the job names, else the one that goes with its governing units."""
    if job.settings and job.settings.page:
        return job.settings.page
    return "letter" if job.project.governing_units == "us" else "a4"


def _near(name: str, known: Iterable[str]) -> str:
    near = get_close_matches(name, list(known), 1)
    return f"did you mean '{near[0]}'?" if near else f"there are: {', '.join(known)}"
