"""The same work inside a price and outside it.

Looks at
    Pay items that name one kind of work both under includes and under excludes, and residue
    that is paid under an item which excludes it.

Why it matters
    One list says that the price pays for it, the other that it does not. The contractor bids
    without it, the agency expects it.

Conflict
    pay_items.grinding.includes: [water and blades, tests, joint resealing]
    pay_items.grinding.excludes: [traffic, slab repairs, resealing of joints, marking]

Settled
    pay_items.grinding.includes: [water and blades, tests]
    pay_items.grinding.excludes: [traffic, slab repairs, resealing of joints, marking]

How to settle it
    Strike it from one of the two lists.

Sources
    FHWA review guide on measurement and payment, 1999: measurement and payment agree
    Texas DOT PS&E manual, section 4.3, undated: their conflict is a common basis of claims
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Evidence, Finding, Grade
from specwriter.model import Job
from specwriter.model.contract import PayItem
from specwriter.rules.payment._costs import same_cost
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="the same work is included and excluded",
    grade=Grade.CONFLICT,
    basis="published",
    base="complete/diamond_grinding",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each work that a price includes and excludes."""
    for item in job.pay_items.values():
        for inside in _entries(item, "includes"):
            for outside in _entries(item, "excludes"):
                if same_cost(inside.written, outside.written):
                    says = f"The price of {item.name} includes {inside.written} and excludes it."
                    ways = ("strike it from includes", "strike it from excludes")
                    yield RULE.finding(None, says, [inside, outside], ways)
    yield from _residue(job)


def _residue(job: Job) -> Iterator[Finding]:
    residue = job.residue
    item = job.pay_items.get(residue.pay_item or "") if residue else None
    if residue is None or item is None:
        return
    for outside in _entries(item, "excludes"):
        if "residue" in outside.written.lower() or "slurry" in outside.written.lower():
            says = f"The residue is paid under {item.name}, whose price excludes {outside.written}."
            at = [evidence(residue, "pay_item", "pay item of the residue"), outside]
            ways = ("strike it from excludes", "name another pay item for the residue")
            yield RULE.finding(None, says, at, ways)


def _entries(item: PayItem, key: str) -> Iterator[Evidence]:
    for index, text in enumerate(getattr(item, key)):
        yield Evidence(path=item.path_to(f"{key}.{index}"), label=key, written=text)
