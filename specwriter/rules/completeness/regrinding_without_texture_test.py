"""A remedy that grinds, and no new test of the texture.

Looks at
    Smoothness tests of ground areas whose remedy is to grind again, and whether the retest looks
    at the texture too.

Why it matters
    Grinding again to mend the ride cuts a new texture and takes more of the slab. When only the
    ride is tested again, the surface that traffic gets is one that nobody has accepted.

Conflict
    areas.mainline.smoothness.test.retest: the whole segment with the same profiler

Settled
    areas.mainline.smoothness.test.retest: the whole segment, and its texture and removal

How to settle it
    Let the retest name the texture and the removal of the surface that is ground again.

Sources
    common practice, no source: a remedy tests again what it disturbs
    commentary on California ride disputes, 2017; memory, unverified: regrinding took texture away
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.model.results import Test
from specwriter.rules.places import rides
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="ground again, and the texture is not tested again",
    grade=Grade.OPEN,
    basis="practice",
    needs=("smoothness.test",),
    applies_to=("diamond_grinding",),
    gap=True,
    base="complete/diamond_grinding",
)

_GRINDS = re.compile(r"\b(re-?)?grind", re.IGNORECASE)
_TEXTURE = re.compile(r"texture|groove|land|ridge|depth|every requirement|each requirement", re.I)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each ground area whose smoothness is mended without testing the texture."""
    for area, ride in rides(job):
        test = ride.test
        if test is None or not _forgets_the_texture(test):
            continue
        says = "The remedy for smoothness grinds again, and the texture is not tested again."
        at = [
            evidence(test, "retest", "retest of smoothness"),
            evidence(test, "remedy", "remedy of smoothness"),
        ]
        yield RULE.finding(area, says, at, ("add the texture and the removal to the retest",))


def _forgets_the_texture(test: Test) -> bool:
    if test.remedy is None or test.retest is None:
        return False
    return bool(_GRINDS.search(test.remedy)) and not _TEXTURE.search(test.retest)
