"""A surface that must be cleared later than the window ends.

Looks at
    The time within which the surface is cleared when it is called for, against the length of the
    work windows.

Why it matters
    A recall that takes longer than the whole shift lasts protects nobody: an aircraft that needs
    the runway waits until the shift would have ended anyhow. Mostly the unit is wrong.

Conflict
    conditions.work_windows: [{days: daily, start: "23:00", end: "05:00"}]
    conditions.clear_within: 8 h

Settled
    conditions.work_windows: [{days: daily, start: "23:00", end: "05:00"}]
    conditions.clear_within: 20 min

How to settle it
    Correct the time or its unit.

Sources
    arithmetic: the recall time is less than the shift
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.quantity import UNITS, show
from specwriter.rules.rule import Rule, evidence, given
from specwriter.rules.times import hours

RULE = Rule(
    title="clearing takes longer than the work window",
    grade=Grade.CONFLICT,
    basis="arithmetic",
    needs=("conditions.clear_within", "conditions.work_windows"),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding when the time to clear is not shorter than the shortest window."""
    conditions = job.conditions
    timed = [each for each in conditions.work_windows if each.start and each.end]
    latest = given(conditions.clear_within).interval.high
    if not timed or latest is None:
        return
    shortest = min(timed, key=hours)
    if latest < hours(shortest) * 3600:
        return
    says = (
        f"The surface is to be cleared within {conditions.clear_within}, and the window from "
        f"{shortest.start} to {shortest.end} lasts {show(hours(shortest) * 3600, UNITS['h'])}."
    )
    at = [
        evidence(conditions, "clear_within", "time to clear the surface"),
        evidence(shortest, "start", "start of the window"),
    ]
    yield RULE.finding(None, says, at, ("a time much shorter than the window",))
