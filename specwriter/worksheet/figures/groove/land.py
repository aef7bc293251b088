"""Land between the grooves, where the job leaves it to be worked out."""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.model import Job
from specwriter.trade import groove_geometry
from specwriter.trade.formula import identity
from specwriter.worksheet.figure import Line
from specwriter.worksheet.inputs import READ_AS_BOTH, of_area, only_thickness, spacing
from specwriter.worksheet.scale import CUT
from specwriter.worksheet.sheet import areas

OF_SPACING = identity("land = spacing - groove width")
OF_BLADES = identity("land = spacer - (segment - core)")
OF_ONE = identity("land = spacer, under blades of one thickness")


def figures(job: Job) -> Iterator[Line]:
    """The land by the pattern, and by the blades where the job names all three thicknesses."""
    for area, sheet in areas(job):
        if area.land is None:
            needs = (spacing(area), of_area(area, "groove.width"))
            yield sheet.figure("land width", OF_SPACING, CUT, needs, groove_geometry.land)
        if only_thickness(area, "blade"):
            spacer = (of_area(area, "blade.spacer"),)
            title = "land that the blades leave"
            yield sheet.figure(title, OF_ONE, CUT, spacer, lambda each: each, note=READ_AS_BOTH)
        elif area.blade is not None and area.blade.spacer is not None:
            blades = [of_area(area, f"blade.{each}") for each in ("segment", "core", "spacer")]
            yield sheet.figure(
                "land that the blades leave", OF_BLADES, CUT, blades, groove_geometry.land_of_blades
            )
