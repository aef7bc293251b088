"""A submittal that is answered after the trial section should be cut.

Looks at
    Submittals due before the work: the time they are due, against the time to answer and the time
    by which the trial section comes before production.

Why it matters
    The trial section is cut with the accepted equipment. When its lead is forgotten, the answer
    comes after the trial, and the trial shows what nobody has accepted.

Conflict
    trial_section: {required: true, before: 10 days}
    submittals.plan: {due: 14 days, due_before: grinding, action: review, response: 7 days}

Settled
    trial_section: {required: true, before: 10 days}
    submittals.plan: {due: 28 days, due_before: grinding, action: review, response: 7 days}

How to settle it
    Ask for the submittal earlier: response, correction, and the lead of the trial section.

Sources
    common practice, no source: due time = response + lead of the trial section
    arithmetic: the sum of the two times against the time due
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="there is no time for the trial section",
    grade=Grade.CAUTION,
    basis="arithmetic",
    needs=("trial_section.before", "submittals"),
    quiet_after=("response-after-due", "no-time-to-resubmit"),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for all submittals whose answer comes after the trial section."""
    trial = given(job.trial_section)
    lead = given(trial.before)
    late = [
        each
        for each in job.submittals.values()
        if each.due
        and each.response
        and each.due.amounts[0].base < each.response.amounts[-1].base + lead.amounts[-1].base
    ]
    if not late or trial.required is False:
        return
    first = late[0]
    says = (
        f"{first.title or first.id} is due {first.due} before the work and answered within "
        f"{first.response}; the trial section comes {lead} before production."
    )
    at = [
        piece
        for each in late
        for piece in (evidence(each, "due", "due"), evidence(each, "response", "response"))
    ]
    at.append(evidence(trial, "before", "lead of the trial section"))
    yield RULE.finding(None, says, at, ("an earlier due time", "a shorter lead of the trial"))
