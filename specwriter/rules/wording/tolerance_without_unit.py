"""A tolerance in a text without its unit.

Looks at
    Texts of the job with ±, +/- or "to within" and a number, and no unit behind it.

Why it matters
    ± 1/16 of what? A bare tolerance is read in inches by one and in percent by the other.

Conflict
    areas.mainline.testing.texture.remedy: reset the head to ± 1/64

Settled
    areas.mainline.testing.texture.remedy: reset the head to ± 1/64 in

How to settle it
    Write the unit.

Sources
    common practice, no source: a number that is measured has a unit
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule
from specwriter.rules.texts import matches

_NUMBER = r"\d+(?:[-\s]?\d+/\d+|/\d+|\.\d+)?(?!\d|/|\.\d)"
_BARE = re.compile(
    rf"(?:±|\+/-)\s*{_NUMBER}(?!\s*[a-zA-Z%°\"])"
    rf"|\b(?:to )?within\s+{_NUMBER}(?=\s*$|\s*[.,;)]|\s+of\b)",
    re.IGNORECASE,
)

RULE = Rule(
    title="a tolerance has no unit",
    grade=Grade.OPEN,
    basis="wording",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding that names every text with a bare tolerance."""
    if places := matches(job, _BARE):
        says = "The text gives a tolerance and not its unit."
        yield RULE.finding(None, says, places, ("write the unit behind the number",))
