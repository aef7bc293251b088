"""Share of a window that stays textured with the failed blades that are allowed."""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.model import Job
from specwriter.trade import coverage
from specwriter.worksheet.figure import Line
from specwriter.worksheet.inputs import Given, of_area, spacing
from specwriter.worksheet.scale import PERCENT
from specwriter.worksheet.sheet import areas


def figures(job: Job) -> Iterator[Line]:
    """One line for each area that lets blades fail and judges a window."""
    for area, sheet in areas(job):
        failed, window = of_area(area, "blade.failed_allowed"), "coverage.window_width"
        if isinstance(failed, Given) and isinstance(of_area(area, window), Given):
            yield sheet.figure(
                "share textured with the failed blades that are allowed",
                coverage.SHARE_LEFT,
                PERCENT,
                (failed, spacing(area), of_area(area, window)),
                coverage.share_left,
                as_one=True,
            )
