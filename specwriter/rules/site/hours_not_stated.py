"""Night work beside neighbours without hours.

Looks at
    Work windows, where the work is done at night near noise-sensitive neighbours.

Why it matters
    Cutting concrete is loud, and local ordinances limit the hours. Bidders who do not know the
    hours price different shifts, and a complaint can stop the work.

Conflict
    conditions.night_work: true
    conditions.noise_sensitive_neighbours: true

Settled
    conditions.night_work: true
    conditions.noise_sensitive_neighbours: true
    conditions.work_windows:
      - {days: Monday to Thursday, start: "21:00", end: "05:30"}

How to settle it
    Give the hours that ordinance and traffic allow.

Sources
    California Construction Manual 4-42, 2022: noise ordinances are looked up before the work begins
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="no hours are given for night work near neighbours",
    grade=Grade.OPEN,
    basis="published",
    needs=("conditions.noise_sensitive_neighbours", "conditions.night_work"),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for night work near neighbours without a work window."""
    conditions = job.conditions
    if not (conditions.noise_sensitive_neighbours and conditions.night_work):
        return
    if conditions.work_windows:
        return
    says = "The work is done at night near people whom noise disturbs, and no hours are given."
    at = [
        evidence(conditions, "night_work", "night work"),
        evidence(conditions, "noise_sensitive_neighbours", "noise-sensitive neighbours"),
    ]
    yield RULE.finding(None, says, at, ("give the hours of work",))
