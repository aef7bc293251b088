"""A texture that nobody pays for.

Looks at
    Whether each area names the pay item under which it is paid.

Why it matters
    Work without a pay item is either free or claimed. Bidders hide its price in another item, and
    when the quantity changes both sides lose the thread.

Conflict
    areas.mainline.pay_item: null
    pay_items: null
    residue.pay_item: null

Settled
    areas.mainline.pay_item: grinding

How to settle it
    Name the pay item, or add one.

Sources
    Texas DOT PS&E specification checklist, undated: every item is called and every call has an item
    FHWA review guide on measurement and payment, 1999: how each kind of work is paid
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="a texture without a pay item",
    grade=Grade.OPEN,
    basis="published",
    gap=True,
    base="complete/diamond_grinding",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each area that names no pay item."""
    for area in job.areas.values():
        if area.pay_item is not None:
            continue
        at = [evidence(area, "texture", "texture")]
        says = "The job does not say under which pay item this texture is paid."
        yield RULE.finding(area, says, at, ("name a pay item (pay_item)", "add a pay item for it"))
