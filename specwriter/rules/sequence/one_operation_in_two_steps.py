"""Flush grind and grooves in one operation, and something between the two.

Looks at
    The operations of the flush grind, where they are one, against grinding and grooving as two
    steps of the order of work, and against a ride test before the grooves.

Why it matters
    A head that grinds and grooves at once leaves no moment between the two. A step or a test that
    is placed there cannot be done, and the ride is then measured on the grooves, by whatever sensor
    the profiler has.

Conflict
    areas.mainline.flush_grind.operations: one
    sequence: [flush grinding, grooving, marking]

Settled
    areas.mainline.flush_grind.operations: two
    sequence: [flush grinding, grooving, marking]

How to settle it
    Cut in two operations, or make one step of the two and test after it.

Sources
    common practice, no source: both ways of cutting are in use
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from specwriter.diagnostic import Evidence, Finding, Grade
from specwriter.model import Area, Job
from specwriter.rules.rule import Rule, evidence, given
from specwriter.rules.steps import pairs

RULE = Rule(
    title="one operation is split in two",
    grade=Grade.CONFLICT,
    basis="practice",
    needs=("flush_grind.operations",),
    applies_to=("next_generation_concrete_surface",),
    base="next_generation_concrete_surface",
)

_BETWEEN = re.compile(r"\bbefore (?:[\w-]+ ){0,4}?groov", re.IGNORECASE)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each area cut in one operation, with all that stands between."""
    steps = next(pairs(job, ("grinding",), ("grooving",)), ())
    for area in job.areas.values():
        grind = given(area.flush_grind)
        found = [*(each.evidence for each in steps), *_tests(area)]
        if grind.operations != "one" or not found:
            continue
        listed = ", ".join(each.written for each in found)
        says = (
            f"Flush grind and grooves are cut in one operation, and these part the two: {listed}."
        )
        at = [evidence(grind, "operations", "operations"), *found]
        yield RULE.finding(area, says, at, ("operations: two", "one step, and the test after it"))


def _tests(area: Area) -> Iterator[Evidence]:
    test = area.smoothness.test if area.smoothness else None
    if test is not None and _BETWEEN.search(test.when or ""):
        yield evidence(test, "when", "time of the smoothness test")
