"""A tolerance as large as its value.

Looks at
    Groove width, depth and spacing, land width and ridge height with a tolerance: whether the
    smallest value that is allowed is nothing.

Why it matters
    3/4 in ± 3/4 in allows no spacing at all. The figure of the value stands where that of the
    tolerance belongs, and every groove passes.

Conflict
    areas.mainline.groove.depth: 1/16 in ± 1/16 in

Settled
    areas.mainline.groove.depth: 1/16 in ± 1/64 in

How to settle it
    Correct the tolerance.

Sources
    arithmetic: the value less its tolerance is more than nothing
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.measures import measures
from specwriter.rules.rule import Rule

_NAMES = frozenset(
    {"groove.width", "groove.depth", "groove.spacing", "groove.clear_gap", "land.width"}
    | {"ridge.height", "groove.per_foot", "groove.per_metre"}
)

RULE = Rule(
    title="the tolerance is as large as the value",
    grade=Grade.CONFLICT,
    basis="arithmetic",
    echo=True,
    slip=True,
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each dimension that may be nothing."""
    for area in job.areas.values():
        for each in measures(area):
            low = each.value.interval.low
            if each.name not in _NAMES or each.value.form != "tolerance" or low is None or low > 0:
                continue
            says = f"The {each.label} is {each.value}, which allows none at all."
            yield RULE.finding(area, says, [each.evidence], ("correct the tolerance",))
