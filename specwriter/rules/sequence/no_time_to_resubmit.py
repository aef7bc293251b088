"""No time to hand a submittal in again.

Looks at
    For each submittal that is reviewed: the time it is due before the work, against twice the
    time the agency may take.

Why it matters
    First submittals come back. Unless the time holds two reviews, the second one ends after the
    machine is on the road.

Conflict
    submittals.plan: {due: 10 days, due_before: grinding, action: review, response: 7 days}

Settled
    submittals.plan: {due: 14 days, due_before: grinding, action: review, response: 7 days}

How to settle it
    Ask for the submittal at least twice the response time before the work.

Sources
    common practice, no source: due time = response + correction + second response
    arithmetic: twice the response against the time due
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.quantity import Quantity
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="there is no time to submit again",
    grade=Grade.CAUTION,
    basis="arithmetic",
    quiet_after=("response-after-due",),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for all submittals whose time holds one review and not two."""
    tight = [
        each
        for each in job.submittals.values()
        if each.due and each.response and _holds_one(each.due, each.response)
    ]
    if not tight:
        return
    first = tight[0]
    says = (
        f"{first.title or first.id} is due {first.due} before the work and answered within "
        f"{first.response}: a second review of {first.response} does not fit."
    )
    at = [
        piece
        for each in tight
        for piece in (evidence(each, "due", "due"), evidence(each, "response", "response"))
    ]
    yield RULE.finding(None, says, at, ("an earlier due time", "a shorter response"))


def _holds_one(due: Quantity, answer: Quantity) -> bool:
    time, review = due.amounts[0].base, answer.amounts[-1].base
    return review <= time < 2 * review
