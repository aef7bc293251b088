"""A submittal due before work that this job does not have.

Looks at
    The event before which each submittal is due, against the textures and the sequence.

Why it matters
    A date that counts back from grinding never comes in a job that only grooves. The submittal is
    then due at no time.

Conflict
    submittals.plan: {title: Residue plan, due: 14 days, due_before: grooving}

Settled
    submittals.plan: {title: Residue plan, due: 14 days, due_before: grinding}

How to settle it
    Name an event of this job.

Sources
    common practice, no source: a due date counts back from an event of the contract
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule, evidence
from specwriter.rules.steps import done

RULE = Rule(
    title="the submittal is due before work that is not done",
    grade=Grade.CAUTION,
    basis="practice",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each submittal due before a cut that the job does not have."""
    present = done(job)
    for each in job.submittals.values():
        event = (each.due_before or "").lower()
        named = {kind for kind in ("grinding", "grooving") if kind[:5] in event}
        if not named or named & present:
            continue
        says = f"It is due before {each.due_before}, and the job has no {' or '.join(named)}."
        at = [evidence(each, "due_before", "due before")]
        at += [evidence(area, "texture", "texture") for area in job.areas.values()]
        yield RULE.finding(None, says, at, ("name an event of this job",))
