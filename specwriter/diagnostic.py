"""What the tool says about a job: grades, places, findings and faults.

A *finding* is a statement about the contract (it speaks in paths such as
``areas.mainline.groove.width``); a *fault* is a reason why a file cannot be read.
Paths are turned into places (file, line, column) once, at the end, by the report.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum
from typing import Literal

Basis = Literal["arithmetic", "published", "practice", "wording"]


class Grade(Enum):
    """How serious a finding is, in the words of the trade; most serious first."""

    CONFLICT = "conflict"
    OPEN = "open"
    CAUTION = "caution"
    NOTE = "note"

    @property
    def rank(self) -> int:
        """Position in the order of seriousness; 0 is the most serious."""
        return list(Grade).index(self)

    def at_least(self, other: Grade) -> bool:
        """True when this grade is as serious as ``other`` or more so."""
        return self.rank <= other.rank


@dataclass(frozen=True, slots=True, kw_only=True)
class Place:
    """Where something stands: 1-based line and column (columns count code points)."""

    file: str
    line: int
    column: int

    def __post_init__(self) -> None:
        if self.line < 1 or self.column < 1:
            raise ValueError(f"a place counts from 1, got {self.line}:{self.column}")

    def __str__(self) -> str:
        return f"{self.file}:{self.line}:{self.column}"


@dataclass(frozen=True, slots=True, kw_only=True)
class Evidence:
    """One requirement that a finding rests on: its path, its name, its wording in the job.

    ``offset`` counts the characters of the value before the words that matter, for texts.
    """

    path: str
    label: str
    written: str
    offset: int = 0


@dataclass(frozen=True, slots=True, kw_only=True)
class Finding:
    """A statement about the job that somebody must settle, decide or know.

    ``says`` is the arithmetic or the reason in plain sentences; ``settle`` lists the ways out;
    ``sources`` name document, section and year, or say "common practice, no source".
    """

    slug: str
    grade: Grade
    basis: Basis
    title: str
    area: str | None
    evidence: tuple[Evidence, ...]
    says: str
    settle: tuple[str, ...] = ()
    sources: tuple[str, ...] = ()

    @property
    def path(self) -> str:
        """The path of the requirement that the finding is filed under."""
        return self.evidence[0].path if self.evidence else ""


@dataclass(frozen=True, slots=True, kw_only=True)
class NotRun:
    """A rule or relation that could not look, and why: a clean report says what was not checked."""

    slug: str
    title: str
    area: str | None
    because: str
    lacks: str = ""
    """The key of the job that is missing, where it is one: ``smoothness.segment``."""
    aside: bool = False
    """True where nothing is missing, but what is stated lies outside what the check holds for."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Fault:
    """A reason why an input cannot be read: one sentence, what to do, and where."""

    place: Place
    says: str
    todo: str = ""
    width: int = 1
    """How many characters the marker under the source line covers."""
