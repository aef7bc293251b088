"""Angle at the top edge of a trapezoidal groove."""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.model import Job
from specwriter.trade import groove_geometry
from specwriter.trade.formula import Formula
from specwriter.worksheet.figure import Line
from specwriter.worksheet.inputs import Given, of_area
from specwriter.worksheet.scale import DEGREES
from specwriter.worksheet.sheet import areas

FORMULA = Formula(
    text="angle = 90° + atan((groove width - groove width at bottom) / 2 / groove depth)",
    source="geometry; DOT/FAA/TC-TN12/7, 2012, prints 117 for 1/2 in over 1/4 in, 1/4 in deep",
    validity="measured through the concrete; a wide angle chips less",
)


def figures(job: Job) -> Iterator[Line]:
    """One line for each area whose grooves are narrower at the bottom."""
    for area, sheet in areas(job):
        bottom = of_area(area, "groove.width_at_bottom")
        if isinstance(bottom, Given):
            needs = (of_area(area, "groove.width"), bottom, of_area(area, "groove.depth"))
            yield sheet.figure(
                "angle at the top edge", FORMULA, DEGREES, needs, groove_geometry.edge_angle
            )
