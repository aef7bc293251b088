"""No trial section is required, and the job speaks of one.

Looks at
    A job that requires no trial section, and its rules for one: length, lead, tries, payment; a
    step of the order of work, a pay item, included work or a submittal that names it.

Why it matters
    One part of the contract says that there is none, another that it is paid or waited for. The
    contractor follows the cheaper one, and the inspector the other.

Conflict
    trial_section: {required: false, length: 500 ft}

Settled
    trial_section: {required: true, length: 500 ft}

How to settle it
    Require the trial section, or take out what speaks of it.

Sources
    common practice, no source: one contract says one thing about the trial section
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from specwriter.diagnostic import Evidence, Finding, Grade
from specwriter.model import Job
from specwriter.model.contract import TrialSection
from specwriter.rules.rule import Rule, evidence, given
from specwriter.rules.trial._trial import NAMED

RULE = Rule(
    title="no trial section is required, and the job speaks of one",
    grade=Grade.CONFLICT,
    basis="wording",
    needs=("trial_section.required",),
)

_RULES = {
    "length": "its length",
    "before": "lead of the trial section",
    "tries": "tries at the trial section",
    "paid": "payment for the trial section",
    "method": "how the trial section is measured",
    "response": "answer to the trial section",
    "production": "beginning of production",
}


def check(job: Job) -> Iterator[Finding]:
    """One finding with everything that speaks of the trial section."""
    trial = given(job.trial_section)
    if trial.required or not (spoken := [*_rules(trial), *_named(job)]):
        return
    says = "The job requires no trial section and speaks of one."
    at = [evidence(trial, "required", "trial section required"), *spoken]
    settle = ("trial_section.required: true", "take out what speaks of it")
    yield RULE.finding(None, says, at, settle)


def _rules(trial: TrialSection) -> Iterator[Evidence]:
    for key, name in _RULES.items():
        if getattr(trial, key) is not None:
            yield evidence(trial, key, name)


def _named(job: Job) -> Iterator[Evidence]:
    for index, step in enumerate(job.sequence):
        if re.search(NAMED, step, re.IGNORECASE):
            yield Evidence(path=f"sequence.{index}", label="step of the work", written=step)
    for item in job.pay_items.values():
        if re.search(NAMED, item.name, re.IGNORECASE):
            yield evidence(item, "name", "pay item")
        for index, work in enumerate(item.includes):
            if re.search(NAMED, work, re.IGNORECASE):
                path = f"{item.path}.includes.{index}"
                yield Evidence(path=path, label="included work", written=work)
    for each in job.submittals.values():
        if each.due_before and re.search(NAMED, each.due_before, re.IGNORECASE):
            yield evidence(each, "due_before", "due before")
