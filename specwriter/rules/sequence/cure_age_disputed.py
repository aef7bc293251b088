"""Asphalt cut at an age on which the documents disagree.

Looks at
    New asphalt that may be cut between 14 and 30 days old, where the house has no setting.

Why it matters
    One document of the same agency is recalled with 14 days and another with 30. Whichever the job
    names, somebody will hold the other against it.

Conflict
    conditions: {new_pavement: true, pavement: airfield_asphalt, pavement_age: at least 14 days}

Settled
    conditions: {new_pavement: true, pavement: airfield_asphalt, pavement_age: at least 14 days}
    settings.cure_age_asphalt: at least 14 days

How to settle it
    Read the edition that governs, and write its age as the setting cure_age_asphalt.

Sources
    AC 150/5370-10H item P-621, 2018 (memory, unverified): 14 days for asphalt
    AC 150/5320-12C, 1997 (memory, unverified): 30 days for new asphalt
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.quantity import parse
from specwriter.rules.places import ASPHALT
from specwriter.rules.rule import Rule, evidence, given
from specwriter.rules.times import cure_setting

RULE = Rule(
    title="the documents disagree on the age of the asphalt",
    grade=Grade.OPEN,
    basis="practice",
    needs=("conditions.new_pavement", "conditions.pavement_age"),
    applies_to=("runway_grooving",),
    base="runway_grooving",
    by_site=True,
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for new asphalt cut from 14 to under 30 days old, where no setting decides."""
    conditions, age = job.conditions, given(job.conditions.pavement_age)
    least = age.interval.low
    if conditions.pavement not in ASPHALT or not conditions.new_pavement or least is None:
        return
    low, high = (parse(text).amounts[0].base for text in ("14 days", "30 days"))
    if cure_setting(job) is not None or not low <= least < high:
        return
    says = (
        f"The new asphalt is cut at an age of {age}; one document is recalled with 14 days and "
        "another with 30, and no setting of the house decides."
    )
    at = [
        evidence(conditions, "pavement_age", "age when cut"),
        evidence(conditions, "pavement", "pavement"),
    ]
    yield RULE.finding(None, says, at, ("write the age that governs as cure_age_asphalt",))
