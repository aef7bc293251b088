"""Two textures under one pay item.

Looks at
    Pay items under which areas of different textures are paid.

Why it matters
    A square yard of one texture does not cost what one of the other does. Under one price the
    contractor gains when the dear texture shrinks and loses when it grows, and every change of
    limits becomes a claim.

Conflict
    areas.extra: {texture: longitudinal_grooving, place: roadway, pay_item: grinding}

Settled
    areas.mainline.pay_item: grinding

How to settle it
    Give each texture its own pay item.

Sources
    common practice, no source: each texture has its own item and price
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.payment._areas import paid_areas
from specwriter.rules.places import words
from specwriter.rules.prose import listed
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="two textures under one pay item",
    grade=Grade.CAUTION,
    basis="practice",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each pay item that pays for more than one texture."""
    for item in job.pay_items.values():
        areas = paid_areas(job, item.id)
        textures = list(dict.fromkeys(area.texture for area in areas))
        if len(textures) < 2:
            continue
        names = listed([words(texture) for texture in textures])
        says = f"{item.name} pays for {names} at one price."
        at = [
            evidence(item, "name", "pay item"),
            *(evidence(area, "texture", f"texture of {area.id}") for area in areas),
        ]
        yield RULE.finding(None, says, at, ("give each texture its own pay item",))
