"""No pay schedule chosen for smoothness.

Looks at
    Smoothness requirements, and whether the job says that pay is adjusted by a table or that it
    is not adjusted.

Why it matters
    Standards often hold several schedules and one that applies when the plans are silent. A
    writer who says nothing has chosen that one, and bidders price another.

Conflict
    areas.mainline.smoothness.pay_adjustment: null

Settled
    areas.mainline.smoothness.pay_adjustment: {schedule: none}

How to settle it
    Say that no adjustment is made, or give the table.

Sources
    Texas DOT ride pay schedules, Table 11-2, undated: one of three is chosen; schedule 3 otherwise
    common practice, no source: what is not chosen in the contract is chosen by a default
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.places import rides
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="no pay schedule is chosen for smoothness",
    grade=Grade.OPEN,
    basis="published",
    needs=("smoothness.limit",),
    gap=True,
    base="complete/diamond_grinding",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each smoothness limit whose effect on pay is nowhere chosen."""
    for area, ride in rides(job):
        pay = ride.pay_adjustment
        if pay is not None and (pay.schedule is not None or pay.bands):
            continue
        says = f"The smoothness limit is {ride.limit}, and no pay schedule is chosen for it."
        at = [evidence(ride, "limit", "smoothness limit")]
        settle = (
            "smoothness.pay_adjustment.schedule: none",
            "give the table (smoothness.pay_adjustment.bands)",
        )
        yield RULE.finding(area, says, at, settle)
