"""A texture that the order of the work leaves out.

Looks at
    The order of the work against the textures of the areas.

Why it matters
    The sequence tells the contractor what comes when, and ties tests, sealing and marking to it.
    A texture that is not in it can be cut at any time, also after the markings. The next
    generation concrete surface is ground flush before it is grooved; grooves alone leave the old
    surface between them.

Conflict
    sequence: [slab repairs, joint sealing, marking]

Settled
    sequence: [slab repairs, grinding, joint sealing, marking]

How to settle it
    Name the cut in the sequence.

Sources
    common practice, no source: the order of the work names each operation
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.places import words
from specwriter.rules.rule import Rule, evidence
from specwriter.rules.steps import MAKES, steps

RULE = Rule(
    title="the order of the work leaves a texture out",
    grade=Grade.OPEN,
    basis="practice",
    needs=("sequence",),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each area whose texture, or the grinding of it, no step cuts."""
    kinds = {step.kind for step in steps(job)}
    first = next(iter(steps(job)))
    for area in job.areas.values():
        work = MAKES[area.texture][0]
        if kinds & {"texturing", work}:
            continue
        lost = work if kinds & {*MAKES[area.texture]} else words(area.texture)
        says = f"The order of the work has {len(job.sequence)} steps, and none is the " + (
            f"{lost} of this area."
        )
        at = [evidence(area, "texture", "texture"), first.evidence]
        yield RULE.finding(area, says, at, (f"name {work} in the sequence",))
