"""What a profile laser or a circular track meter reads on the grooves of the job."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from specwriter.model import Area, Job
from specwriter.quantity import Interval
from specwriter.trade import texture_profile
from specwriter.worksheet.figure import Line
from specwriter.worksheet.inputs import Given, Missing, depth, of_area, spacing
from specwriter.worksheet.scale import TEXTURE
from specwriter.worksheet.sheet import NO_VALUE, Sheet, areas, evidence_of

TITLE = "what a profile reads on the grooves"
_ACROSS = ("transverse_grooving", "runway_grooving")
_NEARLY_ALONG = (0.0, 1.0, 2.0, 5.0)
"""Degrees: a pass that is meant to run along the grooves."""


def figures(job: Job) -> Iterator[Line]:
    """One line for each area whose texture depth is taken from a profile in a known direction."""
    for area, sheet in areas(job):
        stated = area.texture_depth
        if stated is not None and stated.measure in ("MPD", "ETD"):
            yield _line(area, sheet)


def _line(area: Area, sheet: Sheet) -> Line:
    needs = (of_area(area, "groove.width"), depth(area), spacing(area))
    missing = [each.name for each in needs if isinstance(each, Missing)]
    direction = area.texture_depth.direction if area.texture_depth else None
    if direction is None:
        missing.append("direction of the texture profile")
    if missing:
        return sheet.waiting(TITLE, "not given: " + ", ".join(missing))
    given = [each for each in needs if isinstance(each, Given)]
    width, deep, pitch = (_middle(each) for each in given)
    if not 0 < width < pitch:
        return sheet.waiting(TITLE, NO_VALUE)
    at = evidence_of(given)
    if direction == "circle":
        low, high = texture_profile.on_a_circle(width, deep, pitch).mean_of_eight
        note = "over all placements, grooves at the middle of their ranges"
        return sheet.of_span(TITLE, texture_profile.CIRCLE, TEXTURE, _span(low, high), at, note)
    along = (direction == "along_lane") is (area.texture not in _ACROSS)
    angles = _NEARLY_ALONG if along else (90.0,)
    read = [texture_profile.on_a_line(width, deep, pitch, angle) for angle in angles]
    where = "a line within 5 degrees of the grooves" if along else "a line square to the grooves"
    note = f"{where}, grooves at the middle of their ranges"
    return sheet.of_span(
        TITLE, texture_profile.READING, TEXTURE, _span(min(read), max(read)), at, note
    )


def _middle(given: Given) -> float:
    """The middle of an input in millimetres."""
    one = given.as_one()
    return float(((one.low or Fraction(0)) + (one.high or Fraction(0))) / 2 * 1000)


def _span(low: float, high: float) -> Interval:
    return Interval(Fraction(low) / 1000, Fraction(high) / 1000)
