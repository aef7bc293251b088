"""Residue that needs a permit, and nobody who obtains it.

Looks at
    Who obtains the permit for the residue that is hauled or spread.

Why it matters
    A permit takes weeks. When the contract does not say whose task it is, each side waits for the
    other until the machine stands on the road.

Conflict
    conditions.drainage: closed
    residue.regime: haul

Settled
    conditions.drainage: closed
    residue.regime: haul
    residue.permit_by: contractor

How to settle it
    Say whether the contractor or the agency obtains the permit.

Sources
    common practice, no source: the residue clause names who holds the permit
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="nobody is named to obtain the permit for the residue",
    grade=Grade.OPEN,
    basis="practice",
    needs=("residue.regime",),
    quiet_after=("spreading-beside-closed-drainage",),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for residue that calls for a permit which nobody is to obtain."""
    residue, conditions = given(job.residue), job.conditions
    if residue.permit_by is not None:
        return
    at = [evidence(residue, "regime", "residue")]
    if conditions.drainage == "closed":
        at.append(evidence(conditions, "drainage", "drainage"))
    if conditions.sensitive_waters:
        at.append(evidence(conditions, "sensitive_waters", "sensitive waters"))
    ways = {"haul": "hauled", "spread": "spread", "haul_and_spread": "hauled and spread"}
    says = f"The residue is {ways[given(residue.regime)]}, and nobody is named for the permit."
    yield RULE.finding(None, says, at, ("permit_by: contractor", "permit_by: agency"))
