"""What cutting leaves of slab, cover, sealant reservoir and asphalt."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from specwriter.model import Area, Job
from specwriter.trade import removal
from specwriter.trade.formula import identity
from specwriter.worksheet.figure import Line
from specwriter.worksheet.inputs import Given, Missing, depth, of_area, of_site
from specwriter.worksheet.scale import DEPTH, PERCENT
from specwriter.worksheet.sheet import Sheet, areas

LEFT = identity("left = depth before - depth of removal")
_DEPTHS = {
    "slab thickness left": "slab_thickness",
    "sealant reservoir left": "joint_reservoir_depth",
    "asphalt thickness left": "asphalt_thickness",
}


def figures(job: Job) -> Iterator[Line]:
    """Depths that the site states, less what the area takes away."""
    for area, sheet in areas(job):
        site = sheet.job
        removed = of_area(area, "removal.depth")
        if isinstance(removed, Missing) and area.texture != "diamond_grinding":
            yield from _under_grooves(area, sheet)
            continue
        for title, key in _DEPTHS.items():
            before = of_site(site, key)
            if isinstance(before, Given):
                yield sheet.figure(title, LEFT, DEPTH, (before, removed), lambda h, x: h - x)
        slab = of_site(site, "slab_thickness")
        title = "section modulus of the slab left"
        compute = removal.section_modulus_left
        yield sheet.figure(title, removal.SECTION_MODULUS, PERCENT, (slab, removed), compute)
        if isinstance(slab, Given):
            yield sheet.figure(
                "bending stress against before",
                removal.STRESS,
                PERCENT,
                (slab, removed),
                removal.stress_ratio,
            )
        yield from _cover(area, sheet)


def _under_grooves(area: Area, sheet: Sheet) -> Iterator[Line]:
    before = of_site(sheet.job, "cover_to_steel")
    if isinstance(before, Given) or area.place == "bridge_deck":
        needs = (before, depth(area))
        yield sheet.figure(
            "cover to steel left under the grooves",
            removal.COVER,
            DEPTH,
            needs,
            lambda cover, groove: removal.cover_left(cover, Fraction(0), groove),
        )


def _cover(area: Area, sheet: Sheet) -> Iterator[Line]:
    before = of_site(sheet.job, "cover_to_steel")
    if isinstance(before, Missing):
        return
    removed = of_area(area, "removal.depth")
    if area.texture == "diamond_grinding":
        # The depth of removal of a ground surface is measured to the bottom of its grooves.
        yield sheet.figure(
            "cover to steel left", LEFT, DEPTH, (before, removed), lambda h, x: h - x
        )
    else:
        needs = (before, removed, depth(area))
        yield sheet.figure("cover to steel left", removal.COVER, DEPTH, needs, removal.cover_left)
