"""Lost grooves that a coverage window forgives."""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.model import Job
from specwriter.trade import coverage
from specwriter.worksheet.figure import Line
from specwriter.worksheet.inputs import of_area, spacing
from specwriter.worksheet.scale import NUMBER
from specwriter.worksheet.sheet import areas


def figures(job: Job) -> Iterator[Line]:
    """Whole grooves that may be missing across the window of each area that states a share."""
    for area, sheet in areas(job):
        if area.coverage is None or area.coverage.share is None:
            continue
        needs = (
            of_area(area, "coverage.share"),
            of_area(area, "coverage.window_width"),
            spacing(area),
        )
        yield sheet.figure(
            "lost grooves that a window forgives",
            coverage.FORGIVEN,
            NUMBER,
            needs,
            coverage.grooves_forgiven,
            as_one=True,
        )
