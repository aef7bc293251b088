"""Which clauses of the library belong into the document of a job, and why."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from specwriter.assemble.clause import LibraryClause
from specwriter.assemble.labels import words
from specwriter.assemble.language import Register, holds
from specwriter.assemble.library import Library
from specwriter.assemble.outline import Outline
from specwriter.assemble.registers import REGISTERS
from specwriter.assemble.view import Figures, Many, area_views, job_view, with_texture
from specwriter.model import Job


@dataclass(frozen=True, slots=True, kw_only=True)
class Choice:
    """A clause of the library, whether it was chosen, and the reason in a few words."""

    clause: LibraryClause
    chosen: bool
    because: str


def select(job: Job, library: Library, outline: Outline | None = None) -> tuple[Choice, ...]:
    """A choice for every clause, in the order of the house format, ``order`` and id.

    A clause for which the format has no part comes last.
    """
    house = outline or library.outline
    last = (len(house.parts), 0)
    ordered = sorted(library.clauses, key=lambda c: (house.place_of(c) or last, c.order, c.id))
    common = names_of(job)
    return tuple(_choice(clause, common) for clause in ordered)


def names_for(clause: LibraryClause, common: Mapping[str, Any]) -> Mapping[str, Any]:
    """What the names in a clause stand for; ``common`` are those that every clause knows."""
    fixed = Figures({figure.name: figure.value for figure in clause.fixed})
    return {**common, "areas": with_texture(common["all_areas"], clause.textures), "fixed": fixed}


def names_of(job: Job) -> Mapping[str, Any]:
    """What the names of a job stand for, in whatever clause."""
    view = job_view(job)
    return {
        "project": view.read("project"),
        "settings": view.read("settings"),
        "conditions": view.read("conditions"),
        "residue": view.read("residue"),
        "trial_section": view.read("trial_section"),
        "sequence": view.read("sequence"),
        "all_areas": area_views(job),
        "pay_items": Many(view.read("pay_items"), "pay_items"),
        "submittals": Many(view.read("submittals"), "submittals"),
        **{name: Register(name, build) for name, build in REGISTERS.items()},
    }


def _choice(clause: LibraryClause, common: Mapping[str, Any]) -> Choice:
    names = names_for(clause, common)
    if clause.textures and not names["areas"]:
        listed = " or ".join(words(texture) for texture in clause.textures)
        return Choice(clause=clause, chosen=False, because=f"the job has no {listed}")
    if not clause.when:
        textures = " and ".join(words(texture) for texture in clause.textures)
        because = f"the job has {textures}" if textures else "always"
        return Choice(clause=clause, chosen=True, because=because)
    chosen = holds(clause.when, names)
    return Choice(
        clause=clause, chosen=chosen, because=f"{'' if chosen else 'not '}true: {clause.when}"
    )
