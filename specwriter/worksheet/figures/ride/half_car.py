"""The half-car index and the mean index of one surface."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from specwriter.model import Job
from specwriter.quantity import Interval
from specwriter.trade.formula import Formula
from specwriter.trade.ride.half_car import AT_MOST, OF_UNLIKE_PATHS, least_half_car
from specwriter.worksheet.figure import Line
from specwriter.worksheet.inputs import Given, of_area
from specwriter.worksheet.scale import ROUGHNESS
from specwriter.worksheet.sheet import areas

BETWEEN = Formula(
    text="MRI / √2 <= HRI <= MRI",
    source=f"{AT_MOST.source}; {OF_UNLIKE_PATHS.source}",
    validity=OF_UNLIKE_PATHS.validity,
)


def figures(job: Job) -> Iterator[Line]:
    """One line for each area whose ride is limited by the half-car index."""
    for area, sheet in areas(job):
        limit = of_area(area, "smoothness.limit")
        if area.smoothness is None or area.smoothness.index != "HRI":
            continue
        title = "mean index (MRI) of a surface at the half-car limit"
        if not isinstance(limit, Given):
            yield sheet.waiting(title, f"not given: {limit.name}")
            continue
        most = limit.as_one().high or Fraction(0)
        span = Interval(most, most / Fraction(least_half_car(1.0)))
        yield sheet.of_span(title, BETWEEN, ROUGHNESS, span, limit.evidence)
