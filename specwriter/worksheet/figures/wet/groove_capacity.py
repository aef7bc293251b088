"""Rain at which grooves that lead the water off run full."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from specwriter.model import Job
from specwriter.trade import film
from specwriter.worksheet.figure import Line
from specwriter.worksheet.inputs import depth, of_area, of_site, spacing
from specwriter.worksheet.scale import RAIN
from specwriter.worksheet.sheet import areas

ACROSS = ("transverse_grooving", "runway_grooving")


def figures(job: Job) -> Iterator[Line]:
    """Areas whose grooves run across, where the job speaks of rain; others lead nothing off."""
    if job.conditions.rainfall is None:
        return
    for area, sheet in areas(job):
        if area.texture in ACROSS:
            needs = (
                of_area(area, "groove.width"),
                depth(area),
                spacing(area),
                of_site(sheet.job, "drainage_path"),
                of_site(sheet.job, "cross_slope"),
            )
            yield sheet.figure(
                "rain that fills the grooves",
                film.GROOVE_FLOW,
                RAIN,
                needs,
                _rain,
                note="within 40 percent",
                as_one=True,
            )


def _rain(
    width: Fraction, depth: Fraction, spacing: Fraction, path: Fraction, slope: Fraction
) -> Fraction:
    cut, deep, apart = (float(each * 1000) for each in (width, depth, spacing))
    return Fraction(film.rain_that_fills(cut, deep, apart, float(path), float(slope))) / 3_600_000
