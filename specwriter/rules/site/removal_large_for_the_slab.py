"""A depth of removal that is large for the slab.

Looks at
    The greatest removal by grinding, against an eighth of the thickness of the slab or of the
    asphalt.

Why it matters
    Thickness carries the load: a slab that is a tenth thinner loses a fifth of its bending
    strength. Grinding for the ride is no place to spend it, and no one looks at the design again
    when a segment is ground a second time.

Conflict
    conditions.slab_thickness: 8 in
    areas.mainline.removal: {depth: at most 1-1/2 in}

Settled
    conditions.slab_thickness: 8 in
    areas.mainline.removal: {depth: at most 1/2 in}

How to settle it
    Lower the limit, or have the thickness that is left designed and state it.

Sources
    FHWA section 401.16, supplement marked August 2014 (draft copy): 12.5 percent of the thickness
    mechanics: bending strength goes with the square of the thickness; arithmetic
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from specwriter.diagnostic import Evidence, Finding, Grade
from specwriter.model import Job
from specwriter.quantity import Quantity
from specwriter.rules.places import GRINDING
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="the depth of removal is large for the thickness",
    grade=Grade.CAUTION,
    basis="published",
    needs=("removal.depth",),
    quiet_after=("condition-unlikely", "unit-slip"),
    applies_to=GRINDING,
    by_site=True,
)

_SHARE = Fraction(1, 8)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each ground area that may lose more than an eighth of its thickness."""
    layer = _layer(job)
    for area in job.areas.values():
        removal = given(area.removal)
        depth = given(removal.depth)
        left = removal.thickness_after or removal.asphalt_after or removal.section_modulus_after
        most = depth.interval.high
        if layer is None or left or most is None:
            continue
        thickness, place = layer
        if most <= _SHARE * thickness.amounts[0].base:
            continue
        share = float(most / thickness.amounts[0].base * 100)
        says = f"{depth} is {share:.0f} percent of {thickness}; an eighth is 12.5 percent."
        at = [evidence(removal, "depth", "depth of removal"), place]
        yield RULE.finding(area, says, at, ("less removal", "state the thickness that is left"))


def _layer(job: Job) -> tuple[Quantity, Evidence] | None:
    """The layer that is ground, and where its thickness stands."""
    conditions = job.conditions
    if conditions.asphalt_thickness is not None:
        at = evidence(conditions, "asphalt_thickness", "thickness of the asphalt")
        return conditions.asphalt_thickness, at
    if conditions.slab_thickness is not None:
        return conditions.slab_thickness, evidence(conditions, "slab_thickness", "slab thickness")
    return None
