"""A pay table that goes by another index than the limit.

Looks at
    The index of the smoothness limit and the index of the pay table.

Why it matters
    IRI, MRI, HRI and PI give different numbers for one lane. HRI is never above MRI and may be
    a third lower, so a segment can fail the limit and earn the best row.

Conflict
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.pay_adjustment:
      schedule: table
      index: HRI
      bands:
        - {index: at most 45.0 in/mi, pay: 103 percent}
        - {index: at least 45.1 in/mi, pay: 100 percent}

Settled
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.pay_adjustment:
      schedule: table
      bands:
        - {index: at most 45.0 in/mi, pay: 103 percent}
        - {index: at least 45.1 in/mi, pay: 100 percent}

How to settle it
    Let the table go by the index of the limit, with rows set for it.

Sources
    AASHTO R 43-13(2017), section 3.1: the indexes are defined differently
    project calculation: two unlike wheel paths give an HRI of 0.71 times the MRI
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.places import rides
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="pay goes by another index than the limit",
    grade=Grade.CAUTION,
    basis="published",
    needs=("smoothness.index", "smoothness.pay_adjustment.index"),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each pay table with an index of its own."""
    for area, ride in rides(job):
        pay = given(ride.pay_adjustment)
        if pay.index == ride.index:
            continue
        says = (
            f"The limit is one of {ride.index} and the table pays by {pay.index}; the two give "
            "different numbers for the same lane, and neither follows from the other."
        )
        at = [
            evidence(pay, "index", "index of the pay table"),
            evidence(ride, "index", "smoothness index"),
        ]
        settle = (f"let the table go by {ride.index}", f"set the limit in {pay.index}")
        yield RULE.finding(area, says, at, settle)
