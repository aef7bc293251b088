"""The other spacing inside a next generation concrete surface: that of its flush ground lands."""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.model import Job
from specwriter.trade import groove_geometry
from specwriter.trade.formula import identity
from specwriter.worksheet.figure import Line
from specwriter.worksheet.inputs import Given, of_area
from specwriter.worksheet.scale import COUNT, CUT
from specwriter.worksheet.sheet import areas

SPACING = identity("spacing = core + spacer of the flush grind")
COUNTS = identity("cuts per length = length / (core + spacer)")
LAND = identity("land = spacer - (segment - core)")


def figures(job: Job) -> Iterator[Line]:
    """Spacing, count and land of the flush grind, where its blade set is stated."""
    for area, sheet in areas(job):
        segment, core, spacer = (
            of_area(area, f"flush_grind.{each}") for each in ("segment", "core", "spacer")
        )
        if not isinstance(spacer, Given):
            continue
        needs = (core, spacer)
        yield sheet.figure(
            "spacing of the flush grind", SPACING, CUT, needs, groove_geometry.pitch_of_blades
        )
        yield sheet.figure(
            "cuts of the flush grind per length",
            COUNTS,
            COUNT,
            needs,
            lambda core, spacer: 1 / groove_geometry.pitch_of_blades(core, spacer),
        )
        if isinstance(segment, Given):
            yield sheet.figure(
                "land of the flush grind",
                LAND,
                CUT,
                (segment, core, spacer),
                groove_geometry.land_of_blades,
            )
