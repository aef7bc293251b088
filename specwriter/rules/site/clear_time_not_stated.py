"""A runway that opens between shifts, and no time in which it can be cleared.

Looks at
    Whether the pavement opens between shifts, and the time in which it can be cleared.

Why it matters
    An airport that must open early asks for the runway while machines stand on it. Without a time
    to clear it, the recall is an argument by radio.

Conflict
    conditions.open_between_shifts: true

Settled
    conditions.open_between_shifts: true
    conditions.clear_within: 1 h

How to settle it
    Give the time from the call to the clear pavement (conditions.clear_within).

Sources
    UFGS 32 01 26.71, 2014: the designer allows for the reaction time of the contractor
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="the time to clear the pavement is not stated",
    grade=Grade.OPEN,
    basis="published",
    needs=("conditions.open_between_shifts",),
    applies_to=("runway_grooving",),
    gap=True,
    base="complete/runway_grooving",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for a runway that opens between shifts without a time to clear it."""
    conditions = job.conditions
    if not conditions.open_between_shifts or conditions.clear_within is not None:
        return
    says = "The pavement opens between shifts, and the job does not say how soon it can be cleared."
    at = [evidence(conditions, "open_between_shifts", "opens between shifts")]
    yield RULE.finding(None, says, at, ("give conditions.clear_within",))
