"""Joints sealed before the surface is cut.

Looks at
    The order of the work: joint sealing against grinding and grooving.

Why it matters
    The blades take the top of the sealant with the concrete and tear what is left. A joint sealed
    first is sealed twice, and somebody pays for it.

Conflict
    sequence: [joint sealing, grinding, marking]

Settled
    sequence: [grinding, joint sealing, marking]

How to settle it
    Seal the joints after the last cut.

Sources
    Maryland Standard Specifications 509, undated: joints are sealed after grinding
    Pennsylvania Publication 408, section 514, undated: new seals torn by grinding are renewed
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule
from specwriter.rules.steps import CUTTING, pairs

RULE = Rule(
    title="joints are sealed before the surface is cut",
    grade=Grade.CAUTION,
    basis="published",
    needs=("sequence",),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for a sequence in which sealing comes before a cut."""
    for sealing, cut in list(pairs(job, ("sealing",), CUTTING))[:1]:
        says = f"{sealing.words.capitalize()} comes before {cut.words}, which cuts the new sealant."
        settle = (f"{sealing.words} after {cut.words}",)
        yield RULE.finding(None, says, [sealing.evidence, cut.evidence], settle)
