"""Roughness that a promised improvement leaves, and the improvement that a limit asks for."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from specwriter.model import Job
from specwriter.trade.formula import arithmetic
from specwriter.trade.ride import improvement
from specwriter.worksheet.figure import Line
from specwriter.worksheet.inputs import of_area, of_site
from specwriter.worksheet.scale import PERCENT, ROUGHNESS
from specwriter.worksheet.sheet import areas

LEFT = arithmetic("roughness after = existing × (1 - improvement)")
CROSSOVER = arithmetic("existing = limit / (1 - improvement)")
NEEDED = arithmetic("improvement = 1 - limit / existing")

_PUBLISHED = (
    f"best published improvement {improvement.BEST:.0%} ({improvement.CALIFORNIA.source}); "
    f"{improvement.USUAL_BEST:.0%} in the larger study ({improvement.TEXAS.source})"
)


def figures(job: Job) -> Iterator[Line]:
    """Lines of each area that states a limit or an improvement of its roughness index."""
    for area, sheet in areas(job):
        ride, existing = area.smoothness, of_site(sheet.job, "existing_mri")
        if ride is None or ride.index == "PI":
            continue
        if ride.improvement is not None:
            needs = (existing, of_area(area, "smoothness.improvement"))
            title = "roughness that the improvement leaves"
            yield sheet.figure(title, LEFT, ROUGHNESS, needs, lambda mri, share: mri * (1 - share))
        if ride.limit is not None and ride.improvement is not None:
            needs = (of_area(area, "smoothness.limit"), of_area(area, "smoothness.improvement"))
            title = "existing roughness above which the limit is the stricter"
            yield sheet.figure(title, CROSSOVER, ROUGHNESS, needs, _crossover, as_one=True)
        if ride.limit is not None:
            needs = (of_area(area, "smoothness.limit"), existing)
            title = "improvement that the limit asks for"
            yield sheet.figure(
                title, NEEDED, PERCENT, needs, lambda limit, mri: 1 - limit / mri, note=_PUBLISHED
            )


def _crossover(limit: Fraction, share: Fraction) -> float:
    return improvement.crossover(float(limit), float(share))
