"""Joints that will be ground, and nothing on their seals.

Looks at
    Ground areas on jointed concrete, and whether the joints are resealed.

Why it matters
    Grinding takes the top off the sealant and the depth off its reservoir. If nobody says who
    seals, the joints stay open, water and stones go in, and the slabs break at their ends.

Conflict
    conditions.joint_resealing: null

Settled
    conditions.joint_resealing: this_contract

How to settle it
    State it: none, existing seals that are protected, or seals of this contract.

Sources
    Maryland Standard Specifications, section 509, undated: joints are sealed after grinding
    Pennsylvania Publication 408, section 514, undated: newly sealed joints are defined
    common practice, no source: reseal regime as a decision of the writer
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.places import GRINDING
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="it is not stated whether the joints are resealed",
    grade=Grade.OPEN,
    basis="practice",
    needs=("conditions.pavement",),
    applies_to=GRINDING,
    gap=True,
    base="complete/diamond_grinding",
    by_site=True,
)

_JOINTED = ("jointed_plain_concrete", "jointed_reinforced_concrete")


def check(job: Job) -> Iterator[Finding]:
    """One finding for a job that grinds jointed concrete and says nothing on the seals."""
    conditions = job.conditions
    if conditions.pavement not in _JOINTED or conditions.joint_resealing is not None:
        return
    at = [evidence(conditions, "pavement", "pavement")]
    if conditions.joint_reservoir_depth is not None:
        at.append(evidence(conditions, "joint_reservoir_depth", "depth of the joint reservoir"))
    says = "Jointed concrete is ground, and the job does not say whether its joints are resealed."
    settle = (
        "conditions.joint_resealing: none",
        "conditions.joint_resealing: existing",
        "conditions.joint_resealing: this_contract, with a pay item or an inclusion",
    )
    yield RULE.finding(None, says, at, settle)
