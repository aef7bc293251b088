"""A stretch that ends where it begins.

Looks at
    The two stations and the width of each stretch.

Why it matters
    A stretch of no length or no width holds no work, and the quantity of its pay item then belongs
    to nothing. Mostly one station was copied over the other.

Conflict
    areas.mainline.limits.0.to: 10+00

Settled
    areas.mainline.limits.0.to: 62+80

How to settle it
    Correct the station or the width, or take the stretch out.

Sources
    arithmetic: area = length between the stations times width
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="a stretch holds nothing",
    grade=Grade.CONFLICT,
    basis="arithmetic",
    base="complete/diamond_grinding",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each stretch without length or width."""
    for area in job.areas.values():
        for stretch in area.limits:
            start, end, width = stretch.start, stretch.end, stretch.width
            if start and end and start.nominal == end.nominal:
                says = f"The stretch goes from {start} to {end}."
                at = [evidence(stretch, "start", "start"), evidence(stretch, "end", "end")]
            elif width and width.nominal == 0:
                says = f"The stretch is {width} wide."
                at = [evidence(stretch, "width", "width")]
            else:
                continue
            yield RULE.finding(area, says, at, ("correct it", "take the stretch out"))
