"""Grooves on a bridge deck without a strip at its joints.

Looks at
    Whether a strip without grooves is given at the joints of a grooved bridge deck, wider than
    nothing.

Why it matters
    Joints of a deck have steel armour, seals and headers. A head that saws through them costs
    more than the grooving, and it is the operator who must know where to lift the head.

Conflict
    areas.mainline.place: bridge_deck
    areas.mainline.coverage.joint_offset: null

Settled
    areas.mainline.place: bridge_deck
    areas.mainline.coverage.joint_offset: 2 in to 6 in

How to settle it
    Give the strip at the joints.

Sources
    various deck specifications (memory, unverified): 2 to 6 in from the joints of a deck
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="no strip is allowed for at the joints of the deck",
    grade=Grade.OPEN,
    basis="practice",
    applies_to=("longitudinal_grooving", "transverse_grooving"),
    gap=True,
    base="complete/transverse_grooving",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each grooved deck without a strip at its joints, or with one of nothing."""
    for area in job.areas.values():
        strip = area.coverage.joint_offset if area.coverage else None
        if area.place != "bridge_deck" or (strip is not None and strip.interval.high != 0):
            continue
        at = [evidence(area, "place", "place")]
        if area.coverage is not None and strip is not None:
            at.append(evidence(area.coverage, "joint_offset", "strip at joints"))
        given = f"a strip of {strip}" if strip is not None else "no strip"
        says = f"A bridge deck is grooved, and {given} is left at its joints."
        yield RULE.finding(area, says, at, ("give the strip (coverage.joint_offset)",))
