"""Roughness of surfaces that just meet a limit of the profile index: a screen with its scatter."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from specwriter.model import Job
from specwriter.quantity import Interval
from specwriter.trade.formula import Formula
from specwriter.trade.ride import INCH, INCH_PER_MILE
from specwriter.trade.ride.profilograph import SIMULATED, Fit, fit_of
from specwriter.worksheet.figure import Line
from specwriter.worksheet.inputs import Given, of_area
from specwriter.worksheet.scale import ROUGHNESS
from specwriter.worksheet.sheet import Sheet, areas

TITLE = "roughness index of a surface at the limit of the profile index"


def figures(job: Job) -> Iterator[Line]:
    """One line for each area that limits the profile index."""
    for area, sheet in areas(job):
        limit, band = of_area(area, "smoothness.limit"), of_area(area, "smoothness.blanking_band")
        if area.smoothness is None or area.smoothness.index != "PI":
            continue
        if not isinstance(limit, Given) or not isinstance(band, Given):
            lacking = ", ".join(each.name for each in (limit, band) if not isinstance(each, Given))
            yield sheet.waiting(TITLE, f"not given: {lacking}")
            continue
        fit = fit_of(round(float(band.as_one().high or 0) / INCH, 2))
        if fit is None:
            yield sheet.waiting(TITLE, "no line is known for this blanking band")
        else:
            yield _line(sheet, fit, limit, band)


def _line(sheet: Sheet, fit: Fit, limit: Given, band: Given) -> Line:
    low, high = SIMULATED
    at = float(limit.as_one().high or 0) / INCH_PER_MILE
    if not low <= fit.iri(at) <= high:
        return sheet.waiting(TITLE, f"outside what was simulated, {low} to {high} in/mi")
    formula = Formula(
        text=f"roughness index = {fit.slope} × profile index + {fit.offset} in/mi, give or take "
        f"{2 * fit.error:.1f} in/mi",
        source="project calculation: profilograph and quarter-car over the same random profiles",
        validity=f"a screen for random surfaces of {low} to {high} in/mi, two standard errors; "
        "there is no conversion",
    )
    ends = (Fraction(each * INCH_PER_MILE) for each in fit.range_of_iri(at))
    return sheet.of_span(
        TITLE, formula, ROUGHNESS, Interval(*ends), (*limit.evidence, *band.evidence)
    )
