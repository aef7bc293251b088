"""A deviation without the length over which it is measured.

Looks at
    The tolerance under a straightedge, of the cross slope and of the line of the grooves.

Why it matters
    1/8 in under a 10 ft straightedge is an ordinary surface; under 3 ft it is a step. Without
    the length, the figure says nothing.

Conflict
    areas.mainline.straightedge.length: null

Settled
    areas.mainline.straightedge.length: 10 ft

How to settle it
    State the length of the straightedge or of the line.

Sources
    Iowa DOT Standard Specifications, section 2532, 2008: 1/4 in over 12 ft across the lane
    FHWA Federal Lands section 401.16, 2014: 1/4 in under a 10 ft straightedge
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Evidence, Finding, Grade
from specwriter.model import Job
from specwriter.rules.completeness._properties import read
from specwriter.rules.rule import Rule

RULE = Rule(
    title="a deviation without its length",
    grade=Grade.OPEN,
    basis="published",
    gap=True,
    base="complete/diamond_grinding",
)

_PAIRS = (
    ("straightedge.tolerance", "straightedge.length", "gap under the straightedge"),
    ("cross_slope.tolerance", "cross_slope.over", "deviation of the cross slope"),
    ("groove.alignment", "groove.alignment_over", "deviation of the grooves from their line"),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each deviation whose length is not stated."""
    for area in job.areas.values():
        for deviation, length, name in _PAIRS:
            value = read(area, deviation)
            if value is None or read(area, length) is not None:
                continue
            at = [Evidence(path=f"{area.path}.{deviation}", label=name, written=value.text)]
            says = f"The {name} is {value}, and the job does not say over which length."
            yield RULE.finding(area, says, at, (f"state the length ({length})",))
