"""A quantity of residue that the depth of removal cannot give.

Looks at
    The quantity of the pay item for the residue, in a unit of volume or mass, and the concrete that
    the depth of removal takes from the area inside the limits.

Why it matters
    The residue is hauled by the load. A quantity in the wrong unit (cubic feet for cubic yards)
    leaves nearly all of it without a price, and the disposal site without room.

Conflict
    areas.mainline.removal.depth: at most 1/8 in
    residue.pay_item: slurry
    pay_items.slurry: {name: Residue, unit: CF, quantity: 49 CF}

Settled
    areas.mainline.removal.depth: at most 1/8 in
    residue.pay_item: slurry
    pay_items.slurry: {name: Residue, unit: CY, quantity: 49 CY}

How to settle it
    Compute the quantity from depth and area, and say whether water counts.

Sources
    arithmetic: volume = depth times area; solids of 145 to 150 lb/ft3
    trade article; memory, unverified: 50,000 ft2 by 1/8 in as 20 ft3, which are 19.3 CY
    common practice, no source: a tenth is no shallower cut, and ten times is not the water
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Area, Job
from specwriter.quantity import Quantity, show
from specwriter.rules.payment._areas import plan_area
from specwriter.rules.rule import Rule, evidence, given
from specwriter.trade.removal import DENSITY, mass, volume

RULE = Rule(
    title="the quantity of residue does not follow from the depth of removal",
    grade=Grade.CAUTION,
    basis="arithmetic",
    needs=("residue.pay_item",),
)

_APART = 10
"""How many times a quantity may be less or more than the solids."""


def check(job: Job) -> Iterator[Finding]:
    """One finding for a quantity far from the solids of the areas whose limits are known."""
    item = job.pay_items.get(given(given(job.residue).pay_item))
    cut = {area.id: _solids(area) for area in job.areas.values()}
    if item is None or item.quantity is None or not item.quantity.nominal:
        return
    most = _in_kind_of(item.quantity, sum(filter(None, cut.values()), Fraction(0)))
    if not most or not _is_apart(item.quantity.nominal, most, whole=None not in cut.values()):
        return
    says = (
        f"The removal takes up to {show(most, item.quantity.unit, 1)} of solids; the quantity is "
        f"{item.quantity}."
    )
    at = [
        evidence(item, "quantity", "quantity of residue"),
        *(
            evidence(given(job.areas[id].removal), "depth", "depth of removal")
            for id, solids in cut.items()
            if solids is not None
        ),
    ]
    yield RULE.finding(None, says, at, ("a quantity computed from depth and area",))


def _is_apart(stated: Fraction, most: Fraction, *, whole: bool) -> bool:
    """True for a quantity out of reach; too much only where the ``whole`` of the work is known."""
    return stated * _APART <= most or (whole and stated >= most * _APART)


def _solids(area: Area) -> Fraction | None:
    """Cubic metres that the deepest cut takes from an area; ``None`` where that is not known."""
    depth = area.removal.depth if area.removal is not None else None
    deepest, plan = depth.interval.high if depth is not None else None, plan_area((area,))
    return None if deepest is None or plan is None else volume(plan, deepest)


def _in_kind_of(quantity: Quantity, solids: Fraction) -> Fraction | None:
    """The solids as a volume or as a mass, as the quantity is one; ``None`` for any other."""
    if quantity.dimension == "volume":
        return solids
    return mass(solids, DENSITY[1]) if quantity.dimension == "mass" else None
