"""Markings placed before the surface is cut.

Looks at
    The order of the work: pavement marking against grinding and grooving.

Why it matters
    The cut takes the markings with the surface. The lane opens without lines, and the markings are
    paid twice.

Conflict
    sequence: [marking, grinding]

Settled
    sequence: [grinding, marking]

How to settle it
    Place the markings after the last cut; temporary ones for each opening.

Sources
    Maryland Standard Specifications 509, undated: markings are removed before grinding
    common practice, no source: markings are the last operation on the surface
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule
from specwriter.rules.steps import CUTTING, pairs

RULE = Rule(
    title="markings are placed before the surface is cut",
    grade=Grade.CONFLICT,
    basis="published",
    needs=("sequence",),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for a sequence in which marking comes before a cut."""
    for marking, cut in list(pairs(job, ("marking",), CUTTING))[:1]:
        if "temporary" in marking.words.lower():
            continue
        says = f"{marking.words.capitalize()} comes before {cut.words}, which cuts it away."
        settle = (f"{marking.words} after {cut.words}",)
        yield RULE.finding(None, says, [marking.evidence, cut.evidence], settle)
