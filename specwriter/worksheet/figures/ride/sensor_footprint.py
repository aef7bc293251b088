"""Roughness that the height sensor may read into grooves along the lane."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from specwriter.model import Area, Job
from specwriter.model.results import PROFILERS
from specwriter.quantity import Interval
from specwriter.trade.ride.footprint import FALSE_ROUGHNESS, false_roughness
from specwriter.worksheet.figure import Line
from specwriter.worksheet.inputs import Given, Missing, depth, of_area, spacing
from specwriter.worksheet.scale import ROUGHNESS
from specwriter.worksheet.sheet import Sheet, areas, evidence_of

TITLE = "roughness that the height sensor may read into the grooves"
_ALONG = ("diamond_grinding", "longitudinal_grooving", "next_generation_concrete_surface")


def figures(job: Job) -> Iterator[Line]:
    """One line for each area whose ride is profiled over grooves along the lane."""
    for area, sheet in areas(job):
        if area.texture in _ALONG and _is_profiled_over_grooves(area):
            yield _line(area, sheet)


def _is_profiled_over_grooves(area: Area) -> bool:
    ride = area.smoothness
    if ride is None or ride.sensor is None or ride.instrument not in PROFILERS:
        return False
    before = ["before_texturing"]
    if area.texture != "diamond_grinding":
        before.append("after_grinding")
    return ride.measured not in before


def _line(area: Area, sheet: Sheet) -> Line:
    is_spot = area.smoothness is not None and area.smoothness.sensor == "point_laser"
    width = () if is_spot else (of_area(area, "smoothness.sensor_width"),)
    needs = (of_area(area, "groove.width"), depth(area), spacing(area), *width)
    missing = [each.name for each in needs if isinstance(each, Missing)]
    if missing:
        return sheet.waiting(TITLE, "not given: " + ", ".join(missing))
    given = [each for each in needs if isinstance(each, Given)]
    groove, deep, apart, *footprint = (_middle(each) for each in given)
    if not 0 < groove < apart:
        return sheet.waiting(TITLE, "the grooves are wider than their spacing")
    found = Fraction(false_roughness(groove, deep, apart, *(footprint or [0.0])))
    note = "at the middle of each range" + ("; a spot" if is_spot else "")
    return sheet.of_span(
        TITLE, FALSE_ROUGHNESS, ROUGHNESS, Interval(None, found), evidence_of(given), note
    )


def _middle(given: Given) -> float:
    span = given.as_one()
    return float(((span.low or 0) + (span.high or 0)) / 2)
