"""A second try at the trial section for which no time is left.

Looks at
    The number of tries, the time to answer on each, and how long before production the trial
    section is cut.

Why it matters
    First tries fail: that is what they are for. Where the days hold one answer and not two, the
    second try is cut while production should run, and the contractor claims the delay.

Conflict
    trial_section: {required: true, before: 7 days, response: 5 days, tries: 2}

Settled
    trial_section: {required: true, before: 10 days, response: 5 days, tries: 2}

How to settle it
    Cut the trial section earlier, answer sooner, or allow fewer tries.

Sources
    arithmetic: tries x days to answer against the days before production
    common practice, no source: each try is answered before the next is cut
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="there is no time for another try at the trial section",
    grade=Grade.CAUTION,
    basis="arithmetic",
    needs=("trial_section.before", "trial_section.response", "trial_section.tries"),
    quiet_after=("trial-answered-after-production",),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding where the answers on all tries take longer than the time before production."""
    trial = given(job.trial_section)
    before, response, tries = given(trial.before), given(trial.response), given(trial.tries)
    needed = tries.amounts[-1].base * response.amounts[-1].base
    if trial.required is False or needed <= before.amounts[0].base:
        return
    says = (
        f"{tries} tries with {response} to answer each do not fit into the {before} before "
        "production."
    )
    at = [
        evidence(trial, "before", "lead of the trial section"),
        evidence(trial, "response", "answer to the trial section"),
        evidence(trial, "tries", "tries at the trial section"),
    ]
    yield RULE.finding(None, says, at, ("a longer lead of the trial section", "a shorter response"))
