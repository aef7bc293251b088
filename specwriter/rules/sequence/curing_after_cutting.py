"""Curing that stands after the cut.

Looks at
    The order of the work: curing of new pavement or of a deck against grinding and grooving.

Why it matters
    Young concrete ravels under the saw, and the cure is washed off by the cooling water. An age
    that is stated elsewhere does not help when the order of the work says otherwise.

Conflict
    sequence: [paving, grinding, curing, marking]

Settled
    sequence: [paving, curing, grinding, marking]

How to settle it
    Put the curing before the first cut.

Sources
    AC 150/5320-12C, 1997 (memory, unverified): runway pavement cures before it is grooved
    common practice, no source: new pavement reaches its age before it is cut
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule
from specwriter.rules.steps import steps

RULE = Rule(
    title="the pavement cures after it is cut",
    grade=Grade.CONFLICT,
    basis="practice",
    needs=("sequence",),
)

_CURES = re.compile(r"\bcur(?:e|es|ing)\b(?! (?:of )?(?:the )?(?:sealant|seal|joint|epoxy|paint))")
_OTHER = re.compile(r"\b(?:sealant|seal|epoxy|paint|marking|patch|repair)", re.IGNORECASE)


def check(job: Job) -> Iterator[Finding]:
    """One finding for a sequence in which curing follows the first cut."""
    order = list(steps(job))
    cut = next((step for step in order if step.cuts), None)
    cures = [
        step
        for step in order
        if _CURES.search(step.words.lower()) and not _OTHER.search(step.words)
    ]
    # An earlier cure is that of the pavement; a later one belongs to something else.
    if cut is None or not cures or cures[0].number < cut.number:
        return
    says = f"{cut.words.capitalize()} comes before {cures[0].words}."
    settle = (f"{cures[0].words} before {cut.words}",)
    yield RULE.finding(None, says, [cures[0].evidence, cut.evidence], settle)
