"""Solid volume that the grooves take from each unit of area."""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.model import Job
from specwriter.trade import removal, texture_depth
from specwriter.worksheet.figure import Line
from specwriter.worksheet.inputs import bottom, depth, of_area, spacing
from specwriter.worksheet.scale import DEPTH_OF_SOLIDS
from specwriter.worksheet.sheet import areas


def figures(job: Job) -> Iterator[Line]:
    """Cross-section over spacing, as a volume on an area."""
    for area, sheet in areas(job):
        needs = (of_area(area, "groove.width"), bottom(area), depth(area), spacing(area))
        yield sheet.figure(
            "volume of the grooves",
            removal.GROOVE_VOLUME,
            DEPTH_OF_SOLIDS,
            needs,
            texture_depth.groove_share,
        )
