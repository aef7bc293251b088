"""A pay item that pays for nothing in the provision.

Looks at
    Pay items that no area and no residue clause names, and that no list of included or excluded
    work, no step of the sequence and no test speaks of.

Why it matters
    An item without work is bid at any price, and the price is claimed. An item without a measuring
    rule is measured by whoever argues longer.

Conflict
    pay_items.profiles: {name: Profile Testing, unit: LS, measured_as: one lump sum}

Settled
    pay_items.resealing: {name: Joint Resealing, unit: LF, measured_as: length of joint}

How to settle it
    Name the item where its work stands, or take it out.

Sources
    Texas DOT PS&E specification checklist, undated: every item is called and every call has an item
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.model.contract import PayItem
from specwriter.rules.payment._costs import same_cost
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="a pay item that pays for nothing",
    grade=Grade.OPEN,
    basis="published",
    base="complete/diamond_grinding",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each pay item that nothing in the job leads to.

    Where an area has no pay item, this one may be its own: that gap is reported alone.
    """
    if not all(area.pay_item for area in job.areas.values()):
        return
    named = {area.pay_item for area in job.areas.values()}
    if None in named:
        return  # An area without a pay item is reported; the item may be its own.
    if job.residue is not None:
        named.add(job.residue.pay_item)
    for item in job.pay_items.values():
        if item.id in named or _spoken_of(job, item):
            continue
        at = [evidence(item, "name", "pay item")]
        says = f"No area, no step and no list of work leads to the pay item {item.name}."
        settle = ("name it where its work stands", "take the pay item out")
        yield RULE.finding(None, says, at, settle)


def _spoken_of(job: Job, item: PayItem) -> bool:
    lists = [
        text
        for other in job.pay_items.values()
        if other.id != item.id
        for text in (*other.includes, *other.excludes)
    ]
    return any(same_cost(item.name, text) for text in (*lists, *job.sequence))
