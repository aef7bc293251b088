"""Residue spread without a setback from waters.

Looks at
    Whether a distance from waters and inlets is given where residue is spread.

Why it matters
    The residue is caustic and carries fine solids. How far from a ditch, a stream or an inlet it
    must stay is a matter of the permit; without a number the inspector cannot stop the tanker.

Conflict
    residue: {regime: spread, permit_by: agency}

Settled
    residue: {regime: spread, permit_by: agency, setback: 50 ft}

How to settle it
    Give the setback of the permit or of the local authority.

Sources
    Minnesota Pollution Control Agency slurry guidance, undated: only under best practices
    Ohio CMS 257 and 511, 2010: sensitive areas and wetlands are marked and kept free
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="no setback is given for the spreading of residue",
    grade=Grade.OPEN,
    basis="published",
    needs=("residue.regime",),
    quiet_after=("spreading-beside-closed-drainage",),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for a job that spreads residue at no stated distance from waters."""
    residue = given(job.residue)
    if residue.regime == "haul" or residue.setback is not None:
        return
    at = [evidence(residue, "regime", "residue")]
    says = "Residue is to be spread, and the job gives no distance from waters and inlets."
    if job.conditions.sensitive_waters:
        at.append(evidence(job.conditions, "sensitive_waters", "sensitive waters"))
        says += " There are waters near the work that must be kept free of it."
    yield RULE.finding(None, says, at, ("give the setback of the permit",))
