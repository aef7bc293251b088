"""A localized limit without the length over which it is taken.

Looks at
    Limits on localized roughness.

Why it matters
    The shorter the base, the more the index varies. Over 25 ft it scatters about twice as
    much as over 100 ft, so the same figure can be lenient or severe.

Conflict
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.limit: at most 75 in/mi
    areas.mainline.smoothness.localized: {limit: at most 160 in/mi}

Settled
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.limit: at most 75 in/mi
    areas.mainline.smoothness.localized: {limit: at most 160 in/mi, base: 25 ft}

How to settle it
    State the base length; agencies use 25 ft.

Sources
    Oregon DOT U00745-IRI, 2015: the localized limit is taken over 25.0 ft
    project calculation: the scatter grows with one over the square root of the base
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.places import rides
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="a localized limit without its base length",
    grade=Grade.OPEN,
    basis="published",
    needs=("smoothness.localized.limit",),
    quiet_after=("index-instrument", "index-unit", "localized-below-segment-limit"),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each localized limit that does not say over which length."""
    for area, ride in rides(job):
        local = given(ride.localized)
        if local.base is not None:
            continue
        says = f"{local.limit} over 25 ft and {local.limit} over 100 ft are two different limits."
        at = [evidence(local, "limit", "localized limit")]
        yield RULE.finding(area, says, at, ("state the base length, such as 25 ft",))
