"""A trial section left undecided, or without its rules.

Looks at
    Whether a trial section is required, and if so its length, its lead before production, the
    number of tries and how it is paid.

Why it matters
    A trial section is where a wrong blade set costs 500 ft and not a mile. If its rules are
    missing, production waits on an argument about who pays for the second try.

Conflict
    trial_section.tries: null

Settled
    trial_section: {required: false}
    pay_items.grinding.includes: [water and blades, residue, tests]

How to settle it
    Say that none is required, or give its length, lead, tries and payment. It is judged by the
    limits of production unless the job says otherwise.

Sources
    UFGS 32 01 26.71, 2014: a test section is part of the contractor's quality control
    common practice, no source: length, lead, tries and payment of a trial section
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.prose import listed
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="the trial section is not settled",
    grade=Grade.OPEN,
    basis="practice",
    gap=True,
    base="complete/diamond_grinding",
)

_NEEDED = {
    "length": "its length",
    "before": "how long before production it is done",
    "tries": "the number of tries",
    "paid": "how it is paid",
}


def check(job: Job) -> Iterator[Finding]:
    """One finding for a job that does not decide on a trial section, or leaves its rules out."""
    trial = job.trial_section
    if trial is None or trial.required is None:
        area = next(iter(job.areas.values()))
        says = "The job does not say whether a trial section is required."
        settle = ("trial_section.required: false", "trial_section.required: true, with its rules")
        yield RULE.finding(None, says, [evidence(area, "texture", "texture")], settle)
        return
    missing = {key: name for key, name in _NEEDED.items() if getattr(trial, key) is None}
    if trial.required and missing:
        says = f"A trial section is required; the job does not state {listed([*missing.values()])}."
        at = [evidence(trial, "required", "trial section")]
        yield RULE.finding(None, says, at, (f"state under trial_section: {', '.join(missing)}",))
