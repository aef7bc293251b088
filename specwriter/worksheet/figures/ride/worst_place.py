"""The worst short place of a segment that just meets the limit of the index."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from specwriter.model import Job
from specwriter.trade.formula import Formula
from specwriter.trade.ride.lengths import WORST_ERROR, WORST_OVER_SEGMENT, worst_over_segment
from specwriter.worksheet.figure import Line
from specwriter.worksheet.inputs import of_area, of_node
from specwriter.worksheet.scale import ROUGHNESS
from specwriter.worksheet.sheet import areas

WORST = Formula(
    text="worst place = index × "
    + ", ".join(f"{ratio:g} over {feet} ft" for feet, ratio in WORST_OVER_SEGMENT.items()),
    source="project calculation: median over segments of 0.1 mi of random surfaces",
    validity="surfaces without single bumps; half of all segments have a worse place; the ratio "
    f"moves by {WORST_ERROR:g} with the kind of surface",
)


def figures(job: Job) -> Iterator[Line]:
    """One line for each area that limits the index and localized roughness."""
    for area, sheet in areas(job):
        ride = area.smoothness
        if ride is None or ride.localized is None or ride.index not in ("MRI", "IRI", "HRI"):
            continue
        if ride.localized.limit is not None and ride.localized.limit.dimension == "length":
            continue
        base = of_node(ride.localized, "base", "base of localized roughness")
        title = "worst place of a segment at the limit, over the base"
        needs = (of_area(area, "smoothness.limit"), base)
        yield sheet.figure(title, WORST, ROUGHNESS, needs, _worst, as_one=True)


def _worst(limit: Fraction, base: Fraction) -> float:
    return float(limit) * worst_over_segment(float(base))
