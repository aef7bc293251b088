"""What cutting leaves of slab, cover, sealant reservoir, asphalt and overlay."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from specwriter.model import Area, Job
from specwriter.trade import removal
from specwriter.trade.formula import Formula, identity
from specwriter.worksheet.figure import Line
from specwriter.worksheet.inputs import Given, Input, depth, of_area, of_site
from specwriter.worksheet.scale import CUT, DEPTH, PERCENT
from specwriter.worksheet.sheet import Sheet, areas

_BEFORE = {
    "slab thickness left": "slab_thickness",
    "asphalt thickness left": "asphalt_thickness",
    "overlay thickness left": "overlay_thickness",
    "cover to steel left": "cover_to_steel",
}


_STEP = "least step that the depth of removal leaves at a joint"
STEP = Formula(
    text="step = existing faulting - depth of removal, not below 0",
    source="geometry: the high side of a joint is lowered by what is removed there",
    validity="grinding; a joint that is faulted as much as stated",
)


def figures(job: Job) -> Iterator[Line]:
    """Depths that the site states, less what the area takes away."""
    for area, sheet in areas(job):
        ground, grooves = _cuts(area)
        for title, key in _BEFORE.items():
            before = of_site(sheet.job, key)
            if isinstance(before, Given) or _needs_cover(area, key):
                yield _left(sheet, title, before, ground, grooves)
        reservoir = of_site(sheet.job, "joint_reservoir_depth")
        if ground and isinstance(reservoir, Given):
            yield _left(sheet, "sealant reservoir left", reservoir, ground, [])
        if ground:
            yield from _strength(sheet, ground[0])
            faulting = of_site(sheet.job, "existing_faulting")
            if isinstance(faulting, Given):
                needs = (faulting, ground[0])
                yield sheet.figure(_STEP, STEP, CUT, needs, removal.step_left, as_one=True)


def _cuts(area: Area) -> tuple[list[Input], list[Input]]:
    """What is ground away, and the grooves cut below that.

    The depth of removal of a ground surface is measured to the bottom of its grooves.
    """
    removed, is_ground = of_area(area, "removal.depth"), area.texture == "diamond_grinding"
    ground = [removed] if is_ground or isinstance(removed, Given) else []
    return ground, [] if is_ground else [depth(area)]


def _needs_cover(area: Area, key: str) -> bool:
    """True for the cover of a deck, which is worth asking for."""
    return key == "cover_to_steel" and area.place == "bridge_deck"


def _left(
    sheet: Sheet, title: str, before: Input, ground: list[Input], grooves: list[Input]
) -> Line:
    words = [*(["depth of removal"] * len(ground)), *(["groove depth"] * len(grooves))]
    formula = identity(f"{title} = {title.removesuffix(' left')} - {' - '.join(words)}")
    under = " under the grooves" if grooves else ""
    return sheet.figure(f"{title}{under}", formula, DEPTH, (before, *ground, *grooves), _less)


def _less(before: Fraction, *cuts: Fraction) -> Fraction:
    return before - sum(cuts)


def _strength(sheet: Sheet, removed: Input) -> Iterator[Line]:
    slab = of_site(sheet.job, "slab_thickness")
    title, compute = "section modulus of the slab left", removal.section_modulus_left
    yield sheet.figure(title, removal.SECTION_MODULUS, PERCENT, (slab, removed), compute)
    if isinstance(slab, Given):
        title, ratio = "bending stress after, as a share of before", removal.stress_ratio
        yield sheet.figure(title, removal.STRESS, PERCENT, (slab, removed), ratio)
