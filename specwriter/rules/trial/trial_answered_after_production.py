"""An answer on the trial section that comes after production begins.

Looks at
    How long before production the trial section is cut, and how long the agency may take to
    answer on it.

Why it matters
    Production waits for the answer. Where the answer may take longer than the days that are left,
    the machine stands on the road at somebody's cost, or cuts without the answer.

Conflict
    trial_section: {required: true, before: 3 days, response: 7 days}

Settled
    trial_section: {required: true, before: 10 days, response: 7 days}

How to settle it
    Cut the trial section earlier, or answer sooner.

Sources
    arithmetic: days before production - days to answer = days left
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="the answer on the trial section comes after production begins",
    grade=Grade.CONFLICT,
    basis="arithmetic",
    needs=("trial_section.before", "trial_section.response"),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding where the time to answer is longer than the time before production."""
    trial = given(job.trial_section)
    before, response = given(trial.before), given(trial.response)
    if trial.required is False or response.amounts[-1].base <= before.amounts[0].base:
        return
    says = (
        f"The trial section is cut {before} before production, and the agency may take {response} "
        "to answer."
    )
    at = [
        evidence(trial, "before", "lead of the trial section"),
        evidence(trial, "response", "answer to the trial section"),
    ]
    settle = (f"before: {response} or more", f"a response within {before}")
    yield RULE.finding(None, says, at, settle)
