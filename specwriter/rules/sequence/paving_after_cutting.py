"""New pavement that is placed after the surface is cut.

Looks at
    The order of the work: paving, overlays and deck concrete against grinding and grooving.

Why it matters
    What is paved after the cut covers the texture, or has none. The order asks for a surface
    that does not exist yet to be cut.

Conflict
    sequence: [grinding, paving, marking]

Settled
    sequence: [paving, grinding, marking]

How to settle it
    Put the paving before the first cut, or name what is paved where it is another place.

Sources
    common practice, no source: a texture is cut into the finished pavement
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule
from specwriter.rules.steps import steps

RULE = Rule(
    title="the pavement is placed after it is cut",
    grade=Grade.CONFLICT,
    basis="practice",
    needs=("sequence",),
)

_PAVES = re.compile(r"\b(?:re)?paving\b|\boverlay|\b(?:place|pour)\w* (?:of )?(?:deck )?concrete")
_OTHER = re.compile(
    r"remov|mill|shoulder|driveway|sidewalk|approach|curb|gutter|ditch|trail|median|cur(?:e|ing)\b"
)
"""Work at another place, or that takes away what was paved."""


def check(job: Job) -> Iterator[Finding]:
    """One finding for a sequence in which the first paving follows the last cut."""
    order = list(steps(job))
    cuts = [step for step in order if step.cuts]
    paved = [
        step
        for step in order
        if not step.cuts
        and _PAVES.search(step.words.lower())
        and not _OTHER.search(step.words.lower())
    ]
    # Paving between two cuts is textured by the second; an earlier paving may be of another lane.
    if not cuts or not paved or paved[0].number < cuts[-1].number:
        return
    cut, paving = cuts[-1], paved[0]
    says = f"{cut.words.capitalize()} comes before {paving.words}."
    settle = (f"{paving.words} before {cut.words}",)
    yield RULE.finding(None, says, [paving.evidence, cut.evidence], settle)
