"""Residue spread where water runs into inlets and pipes.

Looks at
    What becomes of the residue, against the kind of drainage.

Why it matters
    Closed drainage has no roadside that drinks: what is spread beside the lane goes through the
    next inlet into the stream. The residue is caustic, and the provision forbids that it reaches
    a gutter or a drain, so both cannot be done.

Conflict
    conditions.drainage: closed
    residue: {regime: spread, setback: 50 ft}

Settled
    conditions.drainage: closed
    residue: {regime: haul, permit_by: contractor}

How to settle it
    Haul the residue, or correct the kind of drainage.
    With both kinds of drainage, haul where it is closed and say where that is.

Sources
    Ohio CMS 257.03 and 511.20, 2010: residue is kept out of gutters, drains and open lanes
    Pennsylvania Publication 408, 514.3(b), undated: no residue in gutters or drains
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="residue is spread beside closed drainage",
    grade=Grade.CONFLICT,
    basis="published",
    needs=("conditions.drainage", "residue.regime"),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for a job that spreads residue beside closed drainage."""
    residue = given(job.residue)
    if job.conditions.drainage != "closed" or residue.regime != "spread":
        return
    says = (
        "The residue is to be spread on the roadside, and the water of the roadside runs into "
        "inlets and pipes."
    )
    at = [
        evidence(residue, "regime", "residue"),
        evidence(job.conditions, "drainage", "drainage"),
    ]
    yield RULE.finding(None, says, at, ("haul the residue", "correct the kind of drainage"))
