"""Lots of each tested property, and the readings that they take."""

from __future__ import annotations

import re
from collections.abc import Iterator
from fractions import Fraction

from specwriter.diagnostic import Evidence
from specwriter.model import Area, Job, Limits
from specwriter.model.results import Test
from specwriter.quantity import Interval, Quantity, ValueFault, parse
from specwriter.trade import quantities
from specwriter.trade.formula import arithmetic
from specwriter.worksheet.figure import Line
from specwriter.worksheet.inputs import Given, Missing
from specwriter.worksheet.places import area_of, evidence, lanes_of, stretch_of
from specwriter.worksheet.scale import NUMBER
from specwriter.worksheet.sheet import Sheet, areas
from specwriter.worksheet.tested import Tested, tests_of

READINGS = arithmetic("readings = lots × readings of a lot")

_SIZE = re.compile(r"[\d][\d,]*(?:\.\d+)?(?:-\d+/\d+)?\s*[A-Za-z]+2?\b")
_EACH_SIDE = re.compile(r"\b(?:on|of) each side\b", re.IGNORECASE)


def figures(job: Job) -> Iterator[Line]:
    """Two lines for every test whose lot has a size."""
    for area, sheet in areas(job):
        for each in tests_of(area):
            yield from _lines(sheet.job, area, sheet, each)


def _lines(job: Job, area: Area, sheet: Sheet, tested: Tested) -> Iterator[Line]:
    title = f"lots of the test of {tested.name}"
    size = _size(tested.test.lot)
    if size is None:
        yield sheet.waiting(title, _why(tested.test.lot))
        return
    joined = tested.joined.as_one().high if isinstance(tested.joined, Given) else None
    count = _lots(job, area, size, joined or Fraction(0), of_lane="lane" in (tested.test.lot or ""))
    if count is None:
        yield sheet.waiting(title, "not given: start, end, width and lanes of every stretch")
        return
    count *= _sides(tested.test.lot)
    lot = _evidence(tested.test, "lot", "lot")
    span = Interval(Fraction(count), Fraction(count))
    formula = quantities.JOINED if joined else quantities.LOTS
    rest = tested.joined.evidence if isinstance(tested.joined, Given) else ()
    yield sheet.of_span(title, formula, NUMBER, span, (lot, *rest, *evidence(area)))
    readings = tested.test.readings
    if readings is not None and readings.nominal is not None:
        number = Fraction(quantities.tests(count, int(readings.nominal)))
        yield sheet.of_span(
            f"readings in the test of {tested.name}",
            READINGS,
            NUMBER,
            Interval(number, number),
            (lot, _evidence(tested.test, "readings", "readings")),
        )


def _evidence(test: Test, key: str, label: str) -> Evidence:
    return Evidence(path=test.path_to(key), label=label, written=str(getattr(test, key)))


def _size(lot: str | None) -> Quantity | None:
    """The length or area in the words of a lot: ``each 1,000 ft of lane``."""
    for match in _SIZE.finditer(lot or ""):
        try:
            found = parse(match.group())
        except ValueFault:
            continue
        if found.dimension in ("length", "area") and found.amounts[0].base > 0:
            return found
    return None


def _why(lot: str | None) -> str:
    return f"a lot of '{lot}' has no length or area" if lot else "not given: lot"


def _lots(job: Job, area: Area, size: Quantity, joined: Fraction, *, of_lane: bool) -> int | None:
    if size.dimension == "area":
        total = area_of(area)
        if isinstance(total, Missing) or total.interval.low is None:
            return None
        return quantities.lots([total.interval.low], size.amounts[0].base)
    lengths: list[Fraction] = []
    for limits in area.limits:
        stretch, lanes = stretch_of(limits), _lanes(job, limits) if of_lane else 1
        if stretch is None or not lanes:
            return None
        lengths += [stretch.length] * lanes
    return quantities.lots(lengths, size.amounts[0].base, joined) if lengths else None


def _sides(lot: str | None) -> int:
    """2 for a lot on each side of a centreline, which counts each length twice."""
    return 2 if _EACH_SIDE.search(lot or "") else 1


def _lanes(job: Job, limits: Limits) -> int:
    """Lanes of a stretch: as named, else its width in lanes; 0 where neither is known."""
    if named := lanes_of(limits):
        return len(named)
    lane, stretch = job.conditions.lane_width, stretch_of(limits)
    if lane is None or lane.nominal is None or stretch is None:
        return 0
    return max(1, round(stretch.width / lane.nominal))
