"""A ground surface of stone that polishes.

Looks at
    Ground areas whose coarse aggregate is said to polish, or is a carbonate stone of which
    nothing is said.

Why it matters
    Grinding cuts through the stone, and tyres then run on the cut faces. Many limestones
    and dolomites polish: the texture is then still there, and its grip in the wet is gone.

Conflict
    conditions.coarse_aggregate: {kind: crushed limestone}

Settled
    conditions.coarse_aggregate: {kind: crushed limestone, polishing: false}

How to settle it
    Say whether the stone polishes, by test or by the record of other surfaces of it.
    Where it does, ask for friction and watch it, or choose another treatment.

Sources
    NCHRP Report 634, p. 93, 2009: good aggregate preserves the friction of cut surfaces
    UK DMRB extract (undated): a worn surface may lose the microtexture of its stone
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.places import GRINDING
from specwriter.rules.rule import Rule, evidence, given

_CARBONATE = re.compile(r"\b(limestone|dolomite|dolostone|carbonate|marble)\b", re.IGNORECASE)

RULE = Rule(
    title="the stone of the ground surface may polish",
    grade=Grade.CAUTION,
    basis="published",
    needs=("conditions.coarse_aggregate",),
    applies_to=GRINDING,
    by_site=True,
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for a job that grinds stone which polishes or may polish."""
    stone = given(job.conditions.coarse_aggregate)
    carbonate = _CARBONATE.search(stone.kind or "")
    if stone.polishing is False or not (stone.polishing or carbonate):
        return
    if stone.polishing:
        at = [evidence(stone, "polishing", "polishing")]
        says = "The coarse aggregate polishes, and tyres will run on its cut faces."
    else:
        at = [evidence(stone, "kind", "coarse aggregate")]
        says = (
            f"{(stone.kind or '').capitalize()} is a carbonate stone, which often polishes; the "
            "job does not say whether this one does, and tyres will run on its cut faces."
        )
    at += [evidence(area, "texture", "texture") for area in job.areas.values()]
    settle = ("say whether the stone polishes", "ask for friction and its test")
    yield RULE.finding(None, says, at, settle)
