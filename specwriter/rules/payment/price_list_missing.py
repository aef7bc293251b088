"""A price that does not say what it includes.

Looks at
    Pay items that pay for a texture, and whether they list the work that the price includes.

Why it matters
    Water, blades, residue, tests, profiles, the trial section: each is somebody's money. What no
    list names is left out of the bid and comes back as a claim.

Conflict
    pay_items.grinding.includes: null

Settled
    pay_items.grinding.includes: [water and blades, residue collection and spreading, tests]

How to settle it
    List what the price includes, and what is paid elsewhere.

Sources
    FHWA review guide on measurement and payment, 1999: incidental work is named
    common practice, no source: a closed list of included work, and one of work paid elsewhere
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.payment._areas import paid_areas
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="a price without a list of what it includes",
    grade=Grade.OPEN,
    basis="practice",
    gap=True,
    base="complete/diamond_grinding",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each pay item of a texture that lists no included work."""
    for item in job.pay_items.values():
        if item.includes or not paid_areas(job, item.id):
            continue
        says = f"The job does not say what the price of {item.name} includes."
        at = [evidence(item, "name", "pay item")]
        yield RULE.finding(None, says, at, ("list it under includes",))
