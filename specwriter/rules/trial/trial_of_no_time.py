"""A trial section with no time before production, or with no try.

Looks at
    How long before production the trial section is cut, and how often the contractor may try.

Why it matters
    A trial that is cut on the day of production cannot be tested and answered before the machine
    runs on. With no try allowed there is none at all, and yet production waits for it.

Conflict
    trial_section: {required: true, before: 0 days}

Settled
    trial_section: {required: true, before: 7 days, tries: 2}

How to settle it
    Give the days that test and answer take, and at least one try, or require no trial section.

Sources
    arithmetic: nothing lies between a trial and production that are 0 days apart
    common practice, no source: the trial section is tested and answered before production
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Evidence, Finding, Grade
from specwriter.model import Job
from specwriter.model.contract import TrialSection
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="the trial section has no time or no try",
    grade=Grade.CONFLICT,
    basis="arithmetic",
    needs=("trial_section",),
    quiet_after=("trial-not-required-but-named", "trial-answered-after-production"),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for a trial section whose lead or number of tries is nothing."""
    trial = given(job.trial_section)
    at = list(_nothing(trial))
    if trial.required is False or not at:
        return
    names = " and ".join(f"{each.label}: {each.written}" for each in at)
    says = f"Production waits for a trial section that cannot be shown in time ({names})."
    yield RULE.finding(None, says, at, ("give the days and the tries", "require no trial section"))


def _nothing(trial: TrialSection) -> Iterator[Evidence]:
    for key, label in (("before", "lead of the trial section"), ("tries", "number of tries")):
        value = getattr(trial, key)
        if value is not None and value.interval.high == 0:
            yield evidence(trial, key, label)
