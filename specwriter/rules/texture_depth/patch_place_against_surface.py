"""A texture depth over the grooves that is measured between them, or the other way round.

Looks at
    The surface on which the texture depth is measured, against the place and the method of its
    test.

Why it matters
    Over the grooves a patch measures mostly their volume, between them the texture of the land.
    The two differ by a factor of two or three, so the place decides whether the limit is met.

Conflict
    areas.mainline.texture_depth:
      measure: MTD
      at_least: 0.6 mm
      method: ASTM E965
      edition: "2015"
      surface: over_grooves
      test: {where: between the grooves in both wheel paths}

Settled
    areas.mainline.texture_depth:
      measure: MTD
      at_least: 0.6 mm
      method: ASTM E965
      edition: "2015"
      surface: over_grooves
      test: {where: over the grooves in both wheel paths}

How to settle it
    Name one place in both, and set the limit for it.

Sources
    project calculation: grooves 0.095 in x 1/8 in every 3/4 in alone make 0.40 mm, lands 0.3 mm
    common practice, no source: a limit is measured where it is set for
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.places import words
from specwriter.rules.rule import Rule, evidence, given
from specwriter.rules.texture_depth._depth import GROOVED, depths

RULE = Rule(
    title="the texture depth is measured where it is not asked for",
    grade=Grade.CONFLICT,
    basis="wording",
    needs=("texture_depth.surface", "texture_depth.test"),
    applies_to=GROOVED,
    base="longitudinal_grooving",
)

_BETWEEN = r"\b(?:between|beside|off|away from|clear of) (?:the )?grooves?\b|\bon the lands?\b"
_OVER = r"\b(?:over|across|above|including) (?:the )?grooves?\b"
_OTHER = {
    "over_grooves": re.compile(_BETWEEN, re.IGNORECASE),
    "between_grooves": re.compile(_OVER, re.IGNORECASE),
}
"""Surface → words that name the other one."""


def check(job: Job) -> Iterator[Finding]:
    """One finding for each test whose words name the other surface and not its own."""
    for area, depth in depths(job):
        test, surface = given(depth.test), given(depth.surface)
        (own,) = (pattern for name, pattern in _OTHER.items() if name != surface)
        for key, label in (("where", "place of the test"), ("method", "method of the test")):
            text = getattr(test, key) or ""
            if not _OTHER[surface].search(text) or own.search(text):
                continue
            says = f"The texture depth is asked for {words(surface)}, and tested {text}."
            at = [evidence(depth, "surface", "surface"), evidence(test, key, label)]
            yield RULE.finding(area, says, at, ("one place in both",))
