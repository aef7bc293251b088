"""Production that does not wait for the trial section.

Looks at
    When production may begin: after the trial section is accepted, or before that at the
    contractor's risk.

Why it matters
    The trial shows whether the head gives the texture before a mile of it is cut. Where production
    runs on, a failed trial is followed by a failed mile, and the road is open by then.

Conflict
    trial_section: {required: true, production: at_contractors_risk}

Settled
    trial_section: {required: true, production: after_acceptance}

How to settle it
    Let production begin after the trial section is accepted.

Sources
    common practice, no source: production waits for the trial section
    UFGS 32 01 26.71, Change 1, 2014: the test section is part of quality control
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="production does not wait for the trial section",
    grade=Grade.CAUTION,
    basis="practice",
    needs=("trial_section.production",),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for a trial section that nobody waits for."""
    trial = given(job.trial_section)
    if trial.required is False or trial.production != "at_contractors_risk":
        return
    says = "Production may begin before the trial section is accepted."
    at = [evidence(trial, "production", "beginning of production")]
    yield RULE.finding(None, says, at, ("trial_section.production: after_acceptance",))
