"""Grooves cut before the surface is ground.

Looks at
    The order of the work: grooving against grinding.

Why it matters
    Grinding takes away the depth of the grooves. What is left is shallower than the limit, uneven,
    and cannot be cut again in the same place.

Conflict
    sequence: [grooving, grinding]

Settled
    sequence: [grinding, grooving]

How to settle it
    Grind first, accept the ride, then cut the grooves.

Sources
    common practice, no source: grooves are cut into the finished surface
    arithmetic: groove depth left = groove depth - depth of removal
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule
from specwriter.rules.steps import pairs

RULE = Rule(
    title="the grooves are cut before the surface is ground",
    grade=Grade.CONFLICT,
    basis="arithmetic",
    needs=("sequence",),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for a sequence in which grooving comes before grinding."""
    for groove, grind in list(pairs(job, ("grooving",), ("grinding",)))[:1]:
        says = f"{groove.words.capitalize()} comes before {grind.words}, which takes its depth."
        settle = (f"{grind.words} before {groove.words}",)
        yield RULE.finding(None, says, [groove.evidence, grind.evidence], settle)
