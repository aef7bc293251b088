"""Work that has a pay item and is inside another price.

Looks at
    Pay items of their own for work that the list of another item includes, residue that has its
    own item while a texture price includes it, and work that such an item and a texture price
    both include.

Why it matters
    The agency pays twice, or refuses the second payment and meets a claim. An example is joint
    resealing by the foot that is also inside the grinding price.

Conflict
    pay_items.resealing: {name: Joint Resealing, unit: LF, measured_as: length of joint}
    pay_items.grinding.includes: [water and blades, tests, joint resealing]
    pay_items.grinding.excludes: [traffic control, slab repairs, pavement marking]

Settled
    pay_items.resealing: {name: Joint Resealing, unit: LF, measured_as: length of joint}

How to settle it
    Strike the work from the list, or take the pay item out.

Sources
    FHWA review guide on measurement and payment, 1999: each kind of work is paid in one place
    Texas DOT PS&E manual, section 4.3, undated: conflict in payment is a common basis of claims
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Evidence, Finding, Grade
from specwriter.model import Job
from specwriter.model.contract import PayItem
from specwriter.rules.payment._areas import paid_areas
from specwriter.rules.payment._costs import same_cost
from specwriter.rules.payment._units import pay_unit
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="the same work is paid twice",
    grade=Grade.CONFLICT,
    basis="published",
    base="complete/diamond_grinding",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each work that is included in a price and paid by another item as well."""
    if any(area.pay_item not in job.pay_items for area in job.areas.values()):
        return  # An area without its pay item is reported; any item may be the one that pays it.
    beside = [item for item in job.pay_items.values() if not paid_areas(job, item.id)]
    for number, own in enumerate(beside):
        for other in job.pay_items.values():
            for place in _included(job, own, other):
                says = f"{own.name} has a pay item, and {other.name} includes {place.written}."
                at = [evidence(own, "name", "pay item"), place]
                ways = ("strike it from includes", f"take the pay item {own.name} out")
                yield RULE.finding(None, says, at, ways)
            if other not in beside[:number]:
                yield from _shared(own, other)


def _shared(own: PayItem, other: PayItem) -> Iterator[Finding]:
    """Work that an item which pays for no area includes, and another item too."""
    unit = pay_unit(own.unit)
    if own.id == other.id or (unit is not None and unit.dimension == "area"):
        return
    for index, text in enumerate(own.includes):
        for number, same in enumerate(other.includes):
            if not same_cost(text, same):
                continue
            says = f"{own.name} includes {text}, and {other.name} includes {same}."
            at = [
                Evidence(path=own.path_to(f"includes.{index}"), label="includes", written=text),
                Evidence(path=other.path_to(f"includes.{number}"), label="includes", written=same),
            ]
            yield RULE.finding(None, says, at, ("strike it from one of the two lists",))


def _included(job: Job, own: PayItem, other: PayItem) -> Iterator[Evidence]:
    """The entries of another item's list that name the work of an item of its own."""
    if own.id == other.id:
        return
    for index, text in enumerate(other.includes):
        residue = job.residue is not None and job.residue.pay_item == own.id
        of_residue = residue and any(word in text.lower() for word in ("residue", "slurry"))
        if of_residue or same_cost(own.name, text):
            path = other.path_to(f"includes.{index}")
            yield Evidence(path=path, label="includes", written=text)
