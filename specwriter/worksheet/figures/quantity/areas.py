"""Areas of stretches and areas, and the sum for each pay item beside its stated quantity."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from specwriter.diagnostic import Evidence
from specwriter.model import Area, Job
from specwriter.model.contract import PayItem
from specwriter.quantity import Interval
from specwriter.trade import quantities
from specwriter.trade.formula import Formula
from specwriter.worksheet.figure import Line
from specwriter.worksheet.inputs import Missing
from specwriter.worksheet.places import area_of, evidence, stretch_of
from specwriter.worksheet.scale import AREA
from specwriter.worksheet.sheet import Sheet, areas

ONCE = Formula(
    text=quantities.ONCE.text,
    source="common practice, no source: each area is paid once",
    validity="stretches of one roadway; those that name no lane are taken to lie on one another",
)
DIFFERENCE = Formula(
    text="stated quantity - computed area", source="arithmetic", validity="areas paid as plan area"
)


def figures(job: Job) -> Iterator[Line]:
    """Each stretch, each area, and each pay item that is measured by area."""
    for area, sheet in areas(job):
        yield from _of_area(area, sheet)
    for item in job.pay_items.values():
        mine = [area for area in job.areas.values() if area.pay_item == item.id]
        if mine and (item.quantity is None or item.quantity.dimension == "area"):
            yield from _of_item(Sheet(job), item, mine)


def _of_area(area: Area, sheet: Sheet) -> Iterator[Line]:
    for number, limits in enumerate(area.limits, start=1):
        title = f"area of stretch {number}"
        stretch = stretch_of(limits)
        if stretch is None:
            yield sheet.waiting(title, "not given: start, end and width of the stretch")
        else:
            at = evidence(area)[number - 1 : number]
            span = Interval(stretch.area, stretch.area)
            yield sheet.of_span(title, quantities.AREA, AREA, span, at, limits.roadway or "")
    total = area_of(area)
    if isinstance(total, Missing):
        yield sheet.waiting("plan area", f"not given: {total.name}")
    elif len(area.limits) > 1:
        yield sheet.of_span("plan area", ONCE, AREA, total.interval, total.evidence)


def _of_item(sheet: Sheet, item: PayItem, mine: list[Area]) -> Iterator[Line]:
    title = f"plan area paid as {item.name}"
    stretches = [stretch_of(limits) for area in mine for limits in area.limits]
    known = [each for each in stretches if each is not None]
    if not known or len(known) < len(stretches):
        yield sheet.waiting(title, "not given: start, end and width of every stretch")
        return
    at = tuple(place for area in mine for place in evidence(area))
    total = quantities.area_once(known)
    yield sheet.of_span(title, ONCE, AREA, Interval(total, total), at)
    if item.quantity is None or item.quantity.nominal is None:
        yield sheet.waiting(f"quantity of {item.name} against its area", "not given: quantity")
    else:
        yield _difference(sheet, item, item.quantity.nominal - total)


def _difference(sheet: Sheet, item: PayItem, difference: Fraction) -> Line:
    written = str(item.quantity)
    at = (Evidence(path=item.path_to("quantity"), label="stated quantity", written=written),)
    title = f"stated quantity of {item.name} less its area"
    span = Interval(difference, difference)
    return sheet.of_span(title, DIFFERENCE, AREA, span, at)
