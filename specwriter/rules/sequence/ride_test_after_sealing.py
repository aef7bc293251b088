"""The ride is tested after the joints are sealed or the lane is marked.

Looks at
    The order of the work: the first profile after the cut, against joint sealing and marking.

Why it matters
    A segment that fails is ground again. Where the joints are sealed and the lines are down by
    then, the correction takes them along, and both are paid a second time.

Conflict
    sequence: [grinding, joint sealing, profile test]

Settled
    sequence: [grinding, profile test, joint sealing]

How to settle it
    Put the profile and its corrections before joint sealing and marking.

Sources
    Maryland Standard Specifications 509, undated: joints are sealed after grinding
    common practice, no source: the ride is accepted before what a correction would destroy
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule
from specwriter.rules.steps import CUTTING, steps

RULE = Rule(
    title="the ride is tested after the joints are sealed or the lane is marked",
    grade=Grade.CAUTION,
    basis="practice",
    needs=("sequence",),
    quiet_after=("profile-before-cutting", "sealing-before-cutting", "marking-before-cutting"),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding where the first profile after the last grinding comes after those steps."""
    listed = list(steps(job))
    ground = [each.number for each in listed if each.kind in CUTTING and each.kind != "grooving"]
    if not ground:
        return
    after = listed[ground[-1] + 1 :]
    profile = next((each for each in after if each.kind == "profile"), None)
    if profile is None:
        return
    lost = [each for each in after if each.kind in ("sealing", "marking")]
    early = [each for each in lost if each.number < profile.number]
    if early:
        says = f"The ride is tested after this: {', '.join(each.words for each in early)}."
        at = [profile.evidence, *(each.evidence for each in early)]
        yield RULE.finding(None, says, at, ("test and correct the ride first",))
