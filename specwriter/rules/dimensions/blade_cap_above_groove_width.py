"""A limit on the blade that lets it cut wider than the groove may be.

Looks at
    The greatest cutting segment that is allowed, and the greatest groove width.

Why it matters
    A groove is never narrower than the segment that cuts it, and a little wider than a worn one.
    A blade that passes its own check can then cut nothing but grooves that fail theirs.

Conflict
    areas.mainline.groove.width: at most 0.125 in
    areas.mainline.blade.segment: at most 0.130 in

Settled
    areas.mainline.groove.width: at most 0.130 in
    areas.mainline.blade.segment: at most 0.125 in

How to settle it
    Lower the limit on the blade to the groove width, or take one of the two out.

Sources
    Iowa DOT Construction Manual 12.41, 2008: segments of at most 0.130 in, mean of ten
    arithmetic: a cut is at least as wide as the segment
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="the blade may be wider than the groove",
    grade=Grade.CAUTION,
    basis="arithmetic",
    needs=("blade.segment", "groove.width"),
    echo=True,
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each area whose widest blade is wider than its widest groove."""
    for area in job.areas.values():
        blade, groove = given(area.blade), given(area.groove)
        segment, width = given(blade.segment), given(groove.width)
        widest, room = segment.interval.high, width.reading.high
        if groove.width_basis == "blade" or widest is None or room is None or widest <= room:
            continue
        says = f"The segment may be {segment}, the groove only {width}."
        at = [
            evidence(blade, "segment", "cutting segment"),
            evidence(groove, "width", "groove width"),
        ]
        settle = ("a segment no wider than the widest groove", "one of the two limits alone")
        yield RULE.finding(area, says, at, settle)
