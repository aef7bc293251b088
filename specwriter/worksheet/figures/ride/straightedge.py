"""Roughness of the regular waves that a straightedge tolerance just lets pass: a screen."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from specwriter.model import Area, Job
from specwriter.quantity import Interval
from specwriter.trade.formula import Formula
from specwriter.trade.ride.straightedge import screen
from specwriter.worksheet.figure import Line
from specwriter.worksheet.inputs import Given, Missing, of_area
from specwriter.worksheet.scale import ROUGHNESS
from specwriter.worksheet.sheet import Sheet, areas, evidence_of

TITLE = "roughness of waves that just meet the straightedge"
FORMULA = Formula(
    text="roughness = tolerance × what a wave of one unit of gap makes, over waves of 3 to 30 m "
    "(10 to 98 ft)",
    source="geometry and project calculation with the quarter-car of ASTM E1926",
    validity="regular waves along the road: a screen, never a conversion",
)


def figures(job: Job) -> Iterator[Line]:
    """One line for each area with a straightedge along the road."""
    for area, sheet in areas(job):
        edge = area.straightedge
        if edge is not None and edge.direction != "transverse":
            yield _line(area, sheet)


def _line(area: Area, sheet: Sheet) -> Line:
    needs = (of_area(area, "straightedge.tolerance"), of_area(area, "straightedge.length"))
    missing = [each.name for each in needs if isinstance(each, Missing)]
    if missing:
        return sheet.waiting(TITLE, "not given: " + ", ".join(missing))
    given = [each for each in needs if isinstance(each, Given)]
    tolerance, length = (each.as_one().high for each in given)
    assert tolerance is not None
    assert length is not None
    if length <= 0:
        return sheet.waiting(TITLE, "a straightedge has a length")
    kind = (area.straightedge.kind if area.straightedge else None) or "resting"
    ends = [Fraction(float(tolerance) * each) for each in screen(float(length), kind) if each < 9e9]
    span = Interval(min(ends), max(ends) if len(ends) > 1 else None)
    note = f"taken as a {kind} straightedge"
    return sheet.of_span(TITLE, FORMULA, ROUGHNESS, span, evidence_of(given), note)
