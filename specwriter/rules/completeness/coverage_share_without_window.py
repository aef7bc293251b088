"""A share to be textured without the window in which it is judged.

Looks at
    The share of the surface that must be textured, and the width and length of the window in
    which it is judged.

Why it matters
    95 percent of a mile allows a bare strip of 264 ft; 95 percent of 2 ft by 100 ft allows one
    failed blade at 3/4 in spacing and not two. Without the window the share can be averaged away.

Conflict
    areas.mainline.coverage.window_length: null

Settled
    areas.mainline.coverage.window_length: 100 ft

How to settle it
    State width and length of the window.

Sources
    California DOT Standard Specifications, section 42-2, 2015: 95 percent of any 2 ft by 100 ft
    project calculation: 2 ft at 3/4 in hold 32 grooves; 31 are 96.9 percent, 30 are 93.8 percent
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.prose import listed
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="a share of coverage without its window",
    grade=Grade.OPEN,
    basis="published",
    needs=("coverage.share",),
    gap=True,
    base="complete/diamond_grinding",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each share whose window lacks its width, its length or both."""
    for area in job.areas.values():
        coverage = given(area.coverage)
        lacks = [name for name in ("width", "length") if not getattr(coverage, f"window_{name}")]
        if not lacks:
            continue
        says = f"{coverage.share} must be textured; the job gives no {listed(lacks)} of the window."
        at = [evidence(coverage, "share", "share to be textured")]
        keys = listed([f"coverage.window_{name}" for name in lacks])
        yield RULE.finding(area, says, at, (f"state the window ({keys})", "take the share out"))
