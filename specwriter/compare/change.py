"""What a comparison says: changes with their sense, and findings that come and go."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum
from typing import TYPE_CHECKING, Literal

from specwriter.diagnostic import Finding

if TYPE_CHECKING:
    from specwriter.compare.amounts import AmountChange
    from specwriter.compare.verdicts import VerdictChange

Bearer = Literal["contractor", "agency", "both", "check"]
"""Who carries the change; ``check`` when the values alone cannot tell."""


Touches = Literal["competition", "money", "contract", "site", "record"]
"""What a change touches, as far as an addendum is concerned."""


class Sense(Enum):
    """Which way a requirement went."""

    TIGHTER = "tighter"
    LOOSER = "looser"
    MIXED = "mixed"
    SHIFTED = "shifted"
    ADDED = "added"
    REMOVED = "removed"
    CHANGED = "changed"
    UNKNOWN = "unknown"
    REWORDED = "reworded"
    MOVED = "moved"
    RESTATED = "restated"

    @property
    def mirrored(self) -> Sense:
        """The sense of the same change read from new to old."""
        return _MIRROR.get(self, self)


_MIRROR = {
    Sense.TIGHTER: Sense.LOOSER,
    Sense.LOOSER: Sense.TIGHTER,
    Sense.ADDED: Sense.REMOVED,
    Sense.REMOVED: Sense.ADDED,
}


@dataclass(frozen=True, slots=True, kw_only=True)
class Side:
    """A requirement in one of the two jobs: its path there and its wording."""

    path: str
    written: str


def said(side: Side | None) -> str:
    """The wording for a reader: a fixed word such as ``line_laser`` without its underscore."""
    return side.written.replace("_", " ") if side else "(absent)"


@dataclass(frozen=True, slots=True, kw_only=True)
class Change:
    """One requirement that differs between two jobs.

    ``area`` is the id of the area in the new job (in the old one when it was removed), ``None``
    outside the areas. ``difference`` gives the arithmetic or the words that changed, and
    ``warning`` what a reader could overlook; both may be empty. ``material`` calls
    for an addendum.
    """

    sense: Sense
    label: str
    area: str | None
    old: Side | None
    new: Side | None
    bears: Bearer
    because: str
    source: str
    difference: str = ""
    warning: str = ""
    material: bool = True
    material_because: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class AlteredFinding:
    """A finding that both jobs give about the same requirements, in different words."""

    old: Finding
    new: Finding


@dataclass(frozen=True, slots=True, kw_only=True)
class Comparison:
    """Everything that differs between two jobs and between the findings on them.

    ``areas`` gives the name of each area that a change stands in.
    """

    changes: tuple[Change, ...] = ()
    appeared: tuple[Finding, ...] = ()
    vanished: tuple[Finding, ...] = ()
    altered: tuple[AlteredFinding, ...] = ()
    verdicts: tuple[VerdictChange, ...] = ()
    amounts: tuple[AmountChange, ...] = ()
    remarks: tuple[str, ...] = ()
    areas: tuple[tuple[str, str], ...] = ()

    @property
    def is_empty(self) -> bool:
        """True when nothing differs."""
        told = (self.changes, self.appeared, self.vanished, self.altered, self.remarks)
        return not any((*told, self.verdicts, self.amounts))

    @property
    def material(self) -> tuple[Change, ...]:
        """The changes that call for an addendum."""
        return tuple(change for change in self.changes if change.material)

    def count(self, sense: Sense) -> int:
        """How many changes have this sense."""
        return sum(change.sense is sense for change in self.changes)
