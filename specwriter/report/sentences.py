"""Counting and joining in plain words, for every report in text."""

from __future__ import annotations

import re
import textwrap
from collections.abc import Iterable, Sequence

from specwriter.diagnostic import Finding, Grade
from specwriter.rules import Defect
from specwriter.rules.acceptance import AcceptedFinding

WIDTH = 80
COMPARED_WIDTH = 100
"""Of a comparison, which shows two places and two values."""
INDENT = "   "
_NO_BREAK = "\N{NO-BREAK SPACE}"
_BEFORE_UNIT = re.compile(r"(?<=\d) (?=(?:in|ft|mi|m|mm|km|per|percent|dB|mph|SY|days?)\b)")
CAUTION = (
    "This report finds what its checks look for and nothing else. Local codes, the agency's own "
    "requirements and the licensed engineer of record govern."
)
_PLURALS = {
    Grade.CONFLICT: "conflicts",
    Grade.OPEN: "open decisions",
    Grade.CAUTION: "cautions",
    Grade.NOTE: "notes",
}
_SINGULARS = {Grade.OPEN: "open decision"}


def counted(number: int, singular: str, plural: str) -> str:
    """``1 conflict`` or ``2 conflicts``."""
    return f"{number} {singular if number == 1 else plural}"


def grades(findings: Iterable[Finding]) -> str:
    """Findings counted by grade: ``1 conflict, 2 cautions``; ``nothing found`` when none."""
    found = [finding.grade for finding in findings]
    parts = [
        counted(found.count(grade), _SINGULARS.get(grade, grade.value), _PLURALS[grade])
        for grade in Grade
        if grade in found
    ]
    return ", ".join(parts) or "nothing found"


def ways_out(settle: Sequence[str]) -> str:
    """The ways to settle a finding, as one sentence."""
    return ", or ".join(way.rstrip(".") for way in settle) + "."


def basis_of(finding: Finding) -> str:
    """What a finding rests on, with its sources; empty when it names none."""
    if not finding.sources:
        return ""
    return f"Basis: {finding.basis}. Source: {'; '.join(finding.sources)}."


def acceptance_of(accepted: AcceptedFinding) -> str:
    """Who takes responsibility for a finding, since when, for how long and why."""
    entry = accepted.entry
    until = f", until {entry.until}" if entry.until else ""
    return f"Accepted by {entry.by} on {entry.on}{until}: {entry.because}"


def broke(defect: Defect) -> str:
    """That a check broke, which is a fault of this program."""
    return (
        f"the check {defect.slug} broke ({defect.error}); the other checks ran. "
        "Please report it with the job file."
    )


def wrapped(
    text: str, opening: str = INDENT, following: str | None = None, *, width: int = WIDTH
) -> str:
    """A paragraph of a report, indented; ``following`` indents all lines but the first.

    A number and its unit stay on one line.
    """
    filled = textwrap.fill(
        _BEFORE_UNIT.sub(_NO_BREAK, text),
        width,
        initial_indent=opening,
        subsequent_indent=opening if following is None else following,
        break_long_words=False,
        break_on_hyphens=False,
    )
    return filled.replace(_NO_BREAK, " ")
