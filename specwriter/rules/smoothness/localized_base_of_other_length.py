"""A limit on localized roughness over another base than 25 ft.

Looks at
    The limit on localized roughness and its base.

Why it matters
    Over a shorter base roughness scatters more. A figure that agencies use over 25 ft marks far
    more places over 10 ft, and hardly any over 100 ft.

Conflict
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.localized: {limit: at most 160 in/mi, base: 50 ft}

Settled
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.localized: {limit: at most 160 in/mi, base: 25 ft}

How to settle it
    Use the base of 25 ft, or say from which data the limit for this base was taken.

Sources
    FHWA section 401.16, as reproduced, undated: continuous IRI over 25 ft
    Oregon DOT special provision 00745, 2015: 140.0 in/mi over 25.0 ft
    project calculation: the scatter falls with the square root of the base, 0.23 at 25 ft
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.quantity import parse
from specwriter.rules.places import ROUGHNESS_INDEXES, rides
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="localized roughness over another base than 25 ft",
    grade=Grade.CAUTION,
    basis="published",
    needs=("smoothness.index", "smoothness.localized.limit", "smoothness.localized.base"),
    quiet_after=(
        "index-instrument",
        "index-unit",
        "runway-roughness-index",
        "localized-base-as-long-as-the-segment",
    ),
)

_USUAL = parse("24.5 ft to 25.5 ft").interval


def check(job: Job) -> Iterator[Finding]:
    """One finding for each localized roughness over another base."""
    for area, ride in rides(job):
        local = given(ride.localized)
        base, limit = given(local.base), given(local.limit)
        if ride.index not in ROUGHNESS_INDEXES or not base.interval.meet(_USUAL).is_empty:
            continue
        says = (
            f"Limits on localized roughness are set over 25 ft; over {base} the figure {limit} "
            "marks other places."
        )
        at = [evidence(local, "base", "base"), evidence(local, "limit", "localized limit")]
        settle = ("base: 25 ft", f"name the data from which the limit over {base} was taken")
        yield RULE.finding(area, says, at, settle)
