"""Width of a cutting head that so many blades at their spacing fill."""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.model import Job
from specwriter.quantity import Interval
from specwriter.trade.formula import Formula
from specwriter.worksheet.figure import Line
from specwriter.worksheet.inputs import Given, of_area, spacing
from specwriter.worksheet.reach import reach
from specwriter.worksheet.scale import WIDTH
from specwriter.worksheet.sheet import areas, evidence_of

TITLE = "width of a head that the blades fill"
FORMULA = Formula(
    text="from (blades - 1) × spacing to (blades + 1) × spacing",
    source="geometry; DOT/FAA/TC-TN12/7, page 26, 2012: 20 blades at 1-1/2 in on about 30 in",
    validity="one blade a groove; less than one spacing is left over at the ends",
)


def figures(job: Job) -> Iterator[Line]:
    """One line for each area that states the blades of a head."""
    for area, sheet in areas(job):
        blades, apart = of_area(area, "blade.per_head"), spacing(area)
        if not isinstance(blades, Given):
            continue
        if not isinstance(apart, Given):
            yield sheet.waiting(TITLE, f"not given: {apart.name}")
            continue
        ends = (blades.interval, apart.interval)
        least = reach(lambda count, pitch: (count - 1) * pitch, ends).low
        most = reach(lambda count, pitch: (count + 1) * pitch, ends).high
        at = evidence_of((blades, apart))
        yield sheet.of_span(TITLE, FORMULA, WIDTH, Interval(least, most), at)
