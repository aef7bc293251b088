"""Requirements that nobody tests.

Looks at
    Every property of an area that has a limit, and whether the job says how it is tested. A
    ground texture is looked at as a whole, a sawn one by width, depth and spacing of its grooves.

Why it matters
    A limit without a test is not enforceable: the inspector cannot tell from the text where,
    when and how to look, and each side will measure in the way that suits it. Saw-cut grooves
    have been disputed for just this reason.

Conflict
    areas.mainline.testing.coverage: null
    areas.mainline.testing.joint_match: null

Settled
    areas.mainline.testing.coverage: null
    areas.mainline.coverage.share: null
    areas.mainline.coverage.window_width: null
    areas.mainline.coverage.window_length: null

How to settle it
    State a test for each of them, or take out the limit that nobody will test.
    What is not needed for acceptance or payment does not belong in a contract.

Sources
    FHWA HIAM-20, attachment 3, 2010: the inspector must be able to judge compliance from the text
    FHWA HIAM-20, attachment 4, 2010: a requirement that serves neither acceptance nor payment
    common practice, no source: which properties of a texture are accepted by a test
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.completeness._properties import required
from specwriter.rules.prose import listed
from specwriter.rules.rule import Rule

RULE = Rule(
    title="requirements without a test",
    grade=Grade.OPEN,
    basis="practice",
    gap=True,
    base="complete/diamond_grinding",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each area, with every property that has a limit and no test."""
    for area in job.areas.values():
        untested = [each for each in required(area) if each.test is None]
        if not untested:
            continue
        names = listed([f"{each.title} ({each.key})" for each in untested])
        says = f"The job sets limits and does not say how they are tested: {names}."
        at = [limit for each in untested for limit in each.limits]
        settle = ("state how each is tested", "take out what nobody will test")
        yield RULE.finding(area, says, at, settle)
