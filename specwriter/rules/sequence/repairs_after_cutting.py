"""Repairs that come after the surface is cut.

Looks at
    The order of the work: slab repairs, patches and dowel work against grinding and grooving.

Why it matters
    A patch placed after grinding stands proud or low and has no texture. It must be ground again,
    at a second price, or it stays as a bump and a slippery spot.

Conflict
    sequence: [grinding, slab repairs, marking]

Settled
    sequence: [slab repairs, grinding, marking]

How to settle it
    Put the repairs before grinding and grooving.

Sources
    Maryland Standard Specifications 509, undated: patching comes before grinding
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule
from specwriter.rules.steps import steps

RULE = Rule(
    title="repairs come after the surface is cut",
    grade=Grade.CONFLICT,
    basis="published",
    needs=("sequence",),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for a sequence in which every cut comes before some repair."""
    order = list(steps(job))
    cuts = [step for step in order if step.cuts]
    repairs = [
        step for step in order if step.kind == "repair" and "damage" not in step.words.lower()
    ]
    # A repair between two cuts is textured by the second.
    if not cuts or not repairs or cuts[-1].number > repairs[-1].number:
        return
    cut, repair = cuts[-1], repairs[-1]
    says = f"{cut.words.capitalize()} comes before {repair.words}: the repair stays untextured."
    settle = (f"{repair.words} before {cut.words}",)
    yield RULE.finding(None, says, [repair.evidence, cut.evidence], settle)
