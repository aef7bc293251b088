"""A job that is governed by another unit system than its house.

Looks at
    The governing units of the project against the setting governing_units.

Why it matters
    Forms, gauges and pay items of a house are made for one system. A job in the other one is
    converted by everybody who works on it, and each rounds in another way.

Conflict
    project.governing_units: si
    settings.governing_units: us
    areas.mainline.groove: {width: 3.2 mm, depth: 1.6 mm}
    areas.mainline.land.width: 2.5 mm

Settled
    project.governing_units: us
    settings.governing_units: us

How to settle it
    Use the system of the house, or accept the finding with the reason.

Sources
    Indiana DOT Standard Specifications 109.01, 2010: one system applies unless another is stated
    common practice, no source: which system governs is a decision of the house
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="the governing units are not those of the house",
    grade=Grade.NOTE,
    basis="practice",
    needs=("settings.governing_units",),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding where project and house name two systems."""
    settings = given(job.settings)
    if job.project.governing_units == settings.governing_units:
        return
    says = (
        f"The project is governed by {job.project.governing_units}; the setting governing_units "
        f"is {settings.governing_units}."
    )
    at = [
        evidence(job.project, "governing_units", "governing units"),
        evidence(settings, "governing_units", "setting governing_units"),
    ]
    yield RULE.finding(None, says, at, (f"governing_units: {settings.governing_units}",))
