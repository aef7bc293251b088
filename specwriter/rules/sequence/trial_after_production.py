"""A trial section that comes after the work it is to try.

Looks at
    The order of the work: the trial section against the first production cut.

Why it matters
    The trial shows whether the head gives the texture before a mile of it is cut. After
    production it shows only what can no longer be changed.

Conflict
    sequence: [grinding, trial section, marking]

Settled
    sequence: [trial section, grinding, marking]

How to settle it
    Put the trial section before production, with time to judge it.

Sources
    common practice, no source: production waits for the trial section
    UFGS 32 01 26.71, Change 1, 2014: the test section is part of quality control
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule
from specwriter.rules.steps import steps

RULE = Rule(
    title="the trial section comes after production",
    grade=Grade.CONFLICT,
    basis="practice",
    needs=("sequence",),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for a sequence whose first cut comes before the trial section."""
    order = list(steps(job))
    trial = next((step for step in order if step.kind == "trial"), None)
    cut = next((step for step in order if step.cuts), None)
    if trial is None or cut is None or trial.number < cut.number:
        return
    says = f"{cut.words.capitalize()} comes before {trial.words}, which is to try it out."
    settle = (f"{trial.words} before {cut.words}",)
    yield RULE.finding(None, says, [trial.evidence, cut.evidence], settle)
