"""An answer that is due after the work it is about.

Looks at
    For each submittal: how long before the work it is due, and how long the agency may take.

Why it matters
    A plan handed in 7 days before grinding and answered within 14 is answered after the grinding.
    The contractor waits at the agency's cost, or works without the answer.

Conflict
    submittals.plan: {due: 7 days, due_before: grinding, action: review, response: 14 days}

Settled
    submittals.plan: {due: 21 days, due_before: grinding, action: review, response: 7 days}

How to settle it
    Ask for the submittal earlier, or answer sooner.

Sources
    arithmetic: time due before the work - time to answer = time left to correct
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="the answer is due after the work",
    grade=Grade.CONFLICT,
    basis="arithmetic",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each submittal whose answer may come after its work."""
    for each in job.submittals.values():
        due, answer = each.due, each.response
        if due is None or answer is None or answer.amounts[-1].base <= due.amounts[0].base:
            continue
        before = f" before {each.due_before}" if each.due_before else ""
        says = f"It is due {due}{before}, and the agency may take {answer} to answer."
        at = [evidence(each, "due", "due"), evidence(each, "response", "response")]
        settle = (f"due {answer} or more before", f"a response within {due}")
        yield RULE.finding(None, says, at, settle)
