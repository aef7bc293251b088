"""A gap in one unit system over a length in the other.

Looks at
    Values that belong together: cross slope and its length, straightedge and gap, alignment and
    its length, coverage window, smoothness limit and segment or base.

Why it matters
    1/4 in in 3.6 m is neither of the two published pairs. 0.1 km is not 0.1 mi: a segment that is
    38 percent shorter with the limit of the longer one is a different specification.

Conflict
    areas.mainline.smoothness: {index: MRI, limit: at most 75 in/mi, segment: 0.1 km}

Settled
    areas.mainline.smoothness: {index: MRI, limit: at most 75 in/mi, segment: 0.1 mi}

How to settle it
    Write both values in the governing system.

Sources
    UFGS 02753, undated: 0.1 km and 0.1 mile are used as one length
    Iowa DOT Standard Specifications 2532, 2008: 1/4 in on 12 ft beside 6 mm on 3.6 m
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.measures import apart, measures
from specwriter.rules.rule import Rule

_PAIRS = (
    ("cross_slope.tolerance", "cross_slope.over"),
    ("straightedge.tolerance", "straightedge.length"),
    ("groove.alignment", "groove.alignment_over"),
    ("coverage.window_width", "coverage.window_length"),
    ("smoothness.limit", "smoothness.segment"),
    ("smoothness.localized.limit", "smoothness.localized.base"),
)

RULE = Rule(
    title="two values that belong together are in two unit systems",
    grade=Grade.CAUTION,
    basis="published",
    quiet_after=("index-unit",),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each pair of values that is split between the systems."""
    for area in job.areas.values():
        by_name = {each.name: each for each in measures(area)}
        for pair in _PAIRS:
            left, right = (by_name.get(name) for name in pair)
            if left is None or right is None or not apart(left, right):
                continue
            says = f"The {left.label} is {left.value}, and the {right.label} {right.value}."
            settle = (f"both values in {job.project.governing_units} units",)
            yield RULE.finding(area, says, [left.evidence, right.evidence], settle)
