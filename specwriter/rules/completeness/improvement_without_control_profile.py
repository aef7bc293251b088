"""An improvement in percent, and nobody measures what it starts from.

Looks at
    Improvements asked of the ride: a profile run before the first cut in the order of the work,
    or, without such an order, a text that speaks of a control profile.

Why it matters
    Half of what? Without a profile of the old surface, by the same instrument and in the same
    wheel paths, the improvement can be neither shown nor denied.

Conflict
    areas.mainline.smoothness.improvement: at least 40 percent
    areas.mainline.smoothness.whichever: less_strict
    sequence: [slab repairs, grinding, profile test, joint sealing, marking]

Settled
    areas.mainline.smoothness.improvement: at least 40 percent
    areas.mainline.smoothness.whichever: less_strict
    sequence: [slab repairs, control profile, grinding, profile test, joint sealing, marking]

How to settle it
    Add the control profile to the order of the work, after the repairs and before the first cut.

Sources
    FHWA section 401.16, 2014, as reproduced: percent improvement over the existing surface
    common practice, no source: the control profile is taken on the surface that is then cut
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.places import rides
from specwriter.rules.rule import Rule, evidence
from specwriter.rules.steps import steps
from specwriter.rules.texts import matches

RULE = Rule(
    title="no profile is taken from which the improvement is counted",
    grade=Grade.OPEN,
    basis="practice",
    needs=("smoothness.improvement",),
    gap=True,
    base="complete/diamond_grinding",
)

_CONTROL = re.compile(
    r"\b(?:control|existing|initial|pre-?\w*) (?:profile|run)|\bprofiles? (?:taken )?before\b"
    r"|\bbefore and after\b",
    re.IGNORECASE,
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each improvement without a profile of the surface that was."""
    if _has_control(job):
        return
    for area, ride in rides(job):
        says = (
            f"An improvement of {ride.improvement} is asked for, and no profile is taken before "
            "the first cut."
        )
        at = [evidence(ride, "improvement", "improvement")]
        yield RULE.finding(area, says, at, ("a control profile before the first cut",))


def _has_control(job: Job) -> bool:
    if not job.sequence:
        return bool(matches(job, _CONTROL))
    for step in steps(job):
        if step.cuts:
            return False
        if step.kind == "profile":
            return True
    return False
