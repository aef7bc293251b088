"""What a comparison says: changes with their sense, and findings that come and go."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum
from typing import Literal

from specwriter.diagnostic import Finding

Bearer = Literal["contractor", "agency", "both", "check"]
"""Who carries the change; ``check`` when the values alone cannot tell."""


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


@dataclass(frozen=True, slots=True, kw_only=True)
class Change:
    """One requirement that differs between two jobs.

    ``area`` is the id of the area in the new job (in the old one when it was removed), ``None``
    outside the areas. ``difference`` gives the arithmetic or the words that changed, and
    ``warning`` what a reader could overlook; both may be empty.
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
    remarks: tuple[str, ...] = ()
    areas: tuple[tuple[str, str], ...] = ()

    @property
    def is_empty(self) -> bool:
        """True when nothing differs."""
        return not (self.changes or self.appeared or self.vanished or self.altered or self.remarks)

    def count(self, sense: Sense) -> int:
        """How many changes have this sense."""
        return sum(change.sense is sense for change in self.changes)
