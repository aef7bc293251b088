"""And/or in a text.

Looks at
    Texts of the job that hold and/or.

Why it matters
    It has three readings: one, the other, or both. The contractor does the cheapest, and the agency
    wanted the dearest.

Conflict
    areas.mainline.testing.joint_match.where: transverse and/or longitudinal joints

Settled
    areas.mainline.testing.joint_match.where: transverse joints and longitudinal joints

How to settle it
    Write a and b, a or b, or a, b, or both.

Sources
    Iowa DOT Standard Specifications 2532, undated: speaks of transverse and/or longitudinal joints
    common practice, no source: and/or is not written in a contract
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule
from specwriter.rules.texts import matches

_AND_OR = re.compile(r"\band\s*/\s*or\b", re.IGNORECASE)

RULE = Rule(
    title="and/or has three readings",
    grade=Grade.CAUTION,
    basis="wording",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding that names every text with and/or."""
    if places := matches(job, _AND_OR):
        says = "And/or can mean the one, the other, or both."
        settle = ("write 'a and b', 'a or b', or 'a, b, or both'",)
        yield RULE.finding(None, says, places, settle)
