"""A limit for something that the site does not have.

Looks at
    Groove depths on bridges and over loops, and strips at lights and cables, where the conditions
    say that there are none.

Why it matters
    Either the fact is wrong, and the limit is needed; or the limit came along from another job, and
    its test has nothing to be made on.

Conflict
    conditions.loop_detectors: false
    areas.mainline.groove.depth_over_loops: 1/16 in to 1/8 in

Settled
    conditions.loop_detectors: true
    areas.mainline.groove.depth_over_loops: 1/16 in to 1/8 in

How to settle it
    Correct the fact, or take the limit out.

Sources
    common practice, no source: a limit is set for what is there
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Area, Job, Node
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="a limit for what is not there",
    grade=Grade.NOTE,
    basis="practice",
    base="longitudinal_grooving",
)

_LIMITS = (
    ("groove", "depth_on_bridges", "bridges_within", "groove depth on bridges", "bridges"),
    ("groove", "depth_over_loops", "loop_detectors", "groove depth over loops", "loop detectors"),
    ("coverage", "cable_offset", "arresting_gear", "strip at an arresting cable", "such cable"),
)
"""Noun, its key, the fact that must hold, and what the two are called."""


def check(job: Job) -> Iterator[Finding]:
    """One finding for each limit whose fact is denied."""
    for area in job.areas.values():
        for noun, key, fact, label, thing in _LIMITS:
            owner = _noun(area, noun)
            if owner is None or getattr(owner, key) is None:
                continue
            if getattr(job.conditions, fact) is not False:
                continue
            says = f"The {label} is {getattr(owner, key)}, and the site has no {thing}."
            at = [evidence(owner, key, label), evidence(job.conditions, fact, thing)]
            yield RULE.finding(area, says, at, ("correct the fact", "take the limit out"))


def _noun(area: Area, name: str) -> Node | None:
    found = getattr(area, name)
    return found if isinstance(found, Node) else None
