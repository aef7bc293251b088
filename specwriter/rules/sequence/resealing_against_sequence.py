"""Joint resealing in the conditions and in the order of the work do not agree.

Looks at
    The choice for resealing the joints against the steps of the sequence.

Why it matters
    Either the joints are sealed in this contract or they are not. A step that nobody pays for, or
    a seal that no step places, turns up at the end of the job.

Conflict
    conditions.joint_resealing: none
    sequence: [grinding, joint sealing, marking]

Settled
    conditions.joint_resealing: this_contract
    sequence: [grinding, joint sealing, marking]

How to settle it
    Bring the choice and the sequence into line.

Sources
    common practice, no source: one contract says one thing about the joints
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.places import words
from specwriter.rules.rule import Rule, evidence, given
from specwriter.rules.steps import steps

_OF_JOINTS = re.compile(r"\bjoint|\breseal", re.IGNORECASE)

RULE = Rule(
    title="conditions and order of the work disagree about joint sealing",
    grade=Grade.CONFLICT,
    basis="practice",
    needs=("sequence", "conditions.joint_resealing"),
    quiet_after=("joints-on-jointless-pavement",),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for sealing that only the conditions or only the sequence know."""
    choice = given(job.conditions.joint_resealing)
    sealing = [step for step in steps(job) if step.kind == "sealing"]
    if choice != "this_contract":
        # A deck or a crack can be sealed where no joint is.
        sealing = [step for step in sealing if _OF_JOINTS.search(step.words)]
    if (choice == "this_contract") is bool(sealing):
        return
    at = [evidence(job.conditions, "joint_resealing", "joint resealing")]
    if sealing:
        at += [step.evidence for step in sealing]
        says = (
            f"The conditions say {words(choice)} for joint resealing, and the order of the work "
            f"has the step {sealing[0].words}."
        )
    else:
        at.append(next(iter(steps(job))).evidence)
        says = "The joints are resealed in this contract, and the order of the work has no step."
    yield RULE.finding(None, says, at, ("correct the choice", "correct the sequence"))
