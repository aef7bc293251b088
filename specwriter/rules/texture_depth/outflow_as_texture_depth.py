"""An outflow time where a texture depth is asked for.

Looks at
    The documents named as method of the texture depth.

Why it matters
    An outflow meter measures how fast water leaves under a ring. On grooves the water runs out
    along them, so the time says nothing of the texture, and no document turns it into a depth.

Conflict
    areas.mainline.texture_depth:
      measure: MTD
      at_least: 0.8 mm
      method: ASTM E2380

Settled
    areas.mainline.texture_depth:
      measure: MTD
      at_least: 0.8 mm
      method: ASTM E965
      edition: "2015"

How to settle it
    Measure the depth with a patch or a profile; ask for an outflow time in words of its own.

Sources
    ASTM E2380-05, scope: the relation to other measures is left to the user
    BS EN 13036-3, scope, undated: only for surfaces with a mean profile depth below 0.4 mm
    ASTM STP paper on patch and outflow repeatability, undated: unfit for a least depth
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.places import words
from specwriter.rules.rule import Rule, evidence
from specwriter.rules.standards import named_in
from specwriter.rules.texture_depth._depth import depths

RULE = Rule(
    title="an outflow time is no texture depth",
    grade=Grade.CONFLICT,
    basis="published",
    needs=("texture_depth.method",),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each texture depth that an outflow meter is to measure."""
    for area, depth in depths(job):
        for standard, place in named_in(depth):
            if standard.gives != ("an outflow time",):
                continue
            says = (
                f"{standard.name} ({standard.title}) gives a time in seconds; on "
                f"{words(area.texture)} the water runs out along the grooves."
            )
            at = [place, evidence(area, "texture", "texture")]
            yield RULE.finding(area, says, at, ("measure by ASTM E965", "measure by ISO 13473-1"))
            break
