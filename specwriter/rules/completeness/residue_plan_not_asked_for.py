"""Submittals that leave out the residue plan.

Looks at
    Whether one of the submittals is about residue, where a job lists its submittals and deals
    with residue.

Why it matters
    How the slurry is held, hauled and tested is settled before the first cut or at the first
    spill. A contract that lists its submittals and leaves this one out cannot ask for it later.

Conflict
    submittals.residue_plan: null

Settled
    submittals.residue_plan:
      title: Residue plan
      due: 14 days
      due_before: grinding
      action: review
      response: 7 days

How to settle it
    Ask for the plan, or for the part of another plan that deals with residue.

Sources
    Minnesota Pollution Control Agency slurry guidance, 2012: exempt only under best practices
    common practice, no source: the residue plan is reviewed before the first cut
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule, evidence, given

_ABOUT = re.compile(r"residue|slurry|water|environment|pollution|spill", re.IGNORECASE)

RULE = Rule(
    title="no residue plan is asked for",
    grade=Grade.OPEN,
    basis="practice",
    needs=("residue.regime", "submittals"),
    gap=True,
    base="complete/diamond_grinding",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for a list of submittals without one about residue."""
    for each in job.submittals.values():
        if _ABOUT.search(f"{each.title or ''} {each.content or ''}"):
            return
    says = "The job lists its submittals, and none of them is about the residue."
    at = [evidence(given(job.residue), "regime", "residue")]
    yield RULE.finding(None, says, at, ("ask for a residue plan",))
