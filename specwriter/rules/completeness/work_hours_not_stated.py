"""Work beside traffic without hours.

Looks at
    Work windows, where traffic runs beside the work.

Why it matters
    A lane that must be open at 3:30 p.m. leaves the machine few hours, and setting up and cleaning
    take part of each. Bidders who do not know the hours price different jobs, and workers and
    drivers meet in traffic that nobody planned for.

Conflict
    conditions.work_windows: null

Settled
    conditions.work_windows:
      - {days: Monday to Thursday, start: "09:00", end: "15:30"}

How to settle it
    Give the days and hours in which lanes may be closed.

Sources
    FHWA HIAM-20, attachment 3, 2010: what is required is stated with its time
    common practice, no source: lane closures are let by their hours
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.model.conditions import Conditions, WorkWindow
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="no hours are given for work beside traffic",
    grade=Grade.OPEN,
    basis="practice",
    needs=("conditions.live_traffic",),
    gap=True,
    base="complete/diamond_grinding",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for a job beside traffic without hours, or with a window that is not whole."""
    conditions = job.conditions
    if not conditions.live_traffic or _whole(conditions.work_windows) or _disturbs(conditions):
        return
    if conditions.work_windows:
        says = "A work window does not give its days, its start and its end."
    else:
        says = "Traffic runs beside the work, and no hours are given in which lanes may be closed."
    at = [evidence(conditions, "live_traffic", "traffic beside the work")]
    yield RULE.finding(None, says, at, ("give days and hours (conditions.work_windows)",))


def _whole(windows: tuple[WorkWindow, ...]) -> bool:
    return bool(windows) and all(each.days and each.start and each.end for each in windows)


def _disturbs(conditions: Conditions) -> bool:
    """Night work near neighbours without any hours has a rule of its own: hours-not-stated."""
    night = bool(conditions.night_work and conditions.noise_sensitive_neighbours)
    return night and not conditions.work_windows
