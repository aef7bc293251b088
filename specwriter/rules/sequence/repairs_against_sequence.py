"""Repairs in the conditions and not in the order of the work, or the other way round.

Looks at
    Whether slabs are repaired before texturing, against the steps of the sequence.

Why it matters
    The conditions tell the bidder what was done before, the sequence what is done in this
    contract. When one speaks of repairs and the other does not, nobody knows who does them.

Conflict
    conditions.repairs_before: false
    sequence: [slab repairs, grinding, marking]

Settled
    conditions.repairs_before: true
    sequence: [slab repairs, grinding, marking]

How to settle it
    Bring the conditions and the sequence into line.

Sources
    common practice, no source: one contract says one thing about the repairs
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule, evidence
from specwriter.rules.steps import steps

RULE = Rule(
    title="conditions and order of the work disagree about repairs",
    grade=Grade.CONFLICT,
    basis="practice",
    needs=("sequence", "conditions.repairs_before"),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for repairs that only the sequence knows."""
    if job.conditions.repairs_before:
        return
    order = list(steps(job))
    first_cut = next((step.number for step in order if step.cuts), len(order))
    repairs = [step for step in order if step.kind == "repair" and step.number < first_cut]
    if not repairs:
        return
    says = (
        f"The conditions say that no slab is repaired before texturing, and the order of the work "
        f"begins with {repairs[0].words}."
    )
    at = [
        evidence(job.conditions, "repairs_before", "repairs before texturing"),
        *(step.evidence for step in repairs),
    ]
    settle = ("repairs_before: true", f"take {repairs[0].words} out of the sequence")
    yield RULE.finding(None, says, at, settle)
