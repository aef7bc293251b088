"""Share of the surface that the grooves take away."""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.model import Job
from specwriter.trade import groove_geometry
from specwriter.trade.formula import identity
from specwriter.worksheet.figure import Line
from specwriter.worksheet.inputs import of_area, spacing
from specwriter.worksheet.scale import PERCENT
from specwriter.worksheet.sheet import areas

FORMULA = identity("kerf share = groove width / spacing")


def figures(job: Job) -> Iterator[Line]:
    """Groove width over spacing."""
    for area, sheet in areas(job):
        needs = (of_area(area, "groove.width"), spacing(area))
        yield sheet.figure("kerf share", FORMULA, PERCENT, needs, groove_geometry.kerf_share)
