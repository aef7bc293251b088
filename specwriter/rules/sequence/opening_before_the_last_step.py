"""The lane is opened before its work is done.

Looks at
    The order of the work: opening to traffic against cutting, cleaning and marking.

Why it matters
    A lane that opens before it is swept and marked has residue under tyres and no lines. A lane
    that opens before the cut is closed a second time.

Conflict
    sequence: [grinding, opening to traffic, marking]

Settled
    sequence: [grinding, marking, opening to traffic]

How to settle it
    Open the lane last, or name the temporary markings before each opening.

Sources
    Ohio CMS 257.03 and 511.20, 2010: residue is removed before traffic runs over it
    common practice, no source: a lane opens swept, tested and marked
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule
from specwriter.rules.steps import steps

_CLEANS = re.compile(r"\b(clean|sweep|residue removal|vacuum)", re.IGNORECASE)

RULE = Rule(
    title="the lane is opened before its work is done",
    grade=Grade.CAUTION,
    basis="published",
    needs=("sequence",),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for a sequence in which work of the lane comes after its opening."""
    order = list(steps(job))
    opening = next((step for step in order if step.kind == "opening"), None)
    if opening is None:
        return
    marked = any("temporary" in step.words.lower() for step in order[: opening.number])
    later = [
        step
        for step in order[opening.number :]
        if step.cuts or _CLEANS.search(step.words) or (step.kind == "marking" and not marked)
    ]
    if not later:
        return
    says = f"{opening.words.capitalize()} comes before {later[0].words}."
    at = [opening.evidence, *(step.evidence for step in later)]
    yield RULE.finding(None, says, at, (f"{opening.words} after {later[-1].words}",))
