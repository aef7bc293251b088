"""The areas that a pay item pays for, and what their limits add up to."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction
from typing import ClassVar

from specwriter.diagnostic import Evidence
from specwriter.model import Area, Job, Limits
from specwriter.model.contract import PayItem
from specwriter.quantity import Quantity, Unit, show
from specwriter.rules.payment._units import pay_unit
from specwriter.rules.rule import evidence, given
from specwriter.trade.quantities import Stretch, area_once


def paid_areas(job: Job, item: str) -> tuple[Area, ...]:
    """The areas that are paid under a pay item."""
    return tuple(area for area in job.areas.values() if area.pay_item == item)


def plan_area(areas: tuple[Area, ...]) -> Fraction | None:
    """Square metres inside the limits, each place once; ``None`` while limits are missing."""
    stretches = [_stretch(limits) for area in areas for limits in area.limits]
    whole = [each for each in stretches if each is not None]
    if len(whole) < len(stretches) or not all(area.limits for area in areas) or not whole:
        return None
    return area_once(whole)


_CUT = r"(?:grooved|ground|textured)"
_DEDUCTS = re.compile(
    rf"\bless\b|\bnet\b|\bdeduct|\bminus\b|\barea\s+{_CUT}\b|\b{_CUT}\s+area\b", re.IGNORECASE
)
_NOT_DEDUCTED = r"\b(?:no|not|without)\s+deduct\w*"
_WHOLE = re.compile(
    rf"\bgross\b|{_NOT_DEDUCTED}(?:\s*(?:$|[.;,])|[^.;]*\b(?:margin|strip|edge)s?\b)", re.IGNORECASE
)


def _strips(item: PayItem, areas: tuple[Area, ...]) -> Fraction:
    """Square metres of the widest strips at both edges, where the rule of measuring deducts
    them, or counts what is cut."""
    rule = item.measured_as or ""
    if not _DEDUCTS.search(rule) or _WHOLE.search(rule):
        return Fraction(0)
    return sum((_edges(area) for area in areas), Fraction(0))


def _edges(area: Area) -> Fraction:
    offset = area.coverage.edge_offset if area.coverage else None
    widest = offset.interval.high if offset else None
    stretches = [_stretch(each) for each in area.limits]
    length = sum((each.length for each in stretches if each is not None), Fraction(0))
    return 2 * length * (widest or 0)


def _stretch(limits: Limits) -> Stretch | None:
    start, end, width = (_point(each) for each in (limits.start, limits.end, limits.width))
    if start is None or end is None or width is None:
        return None
    lanes = frozenset(re.findall(r"\d+", limits.lanes or ""))
    return Stretch(roadway=limits.roadway or "", start=start, end=end, width=width, lanes=lanes)


def _point(value: Quantity | None) -> Fraction | None:
    return None if value is None else value.nominal


@dataclass(frozen=True, slots=True, kw_only=True)
class Compared:
    """The quantity of a pay item beside the area of its limits, all in square metres.

    ``strips`` is what the measuring rule deducts at the edges, at most.
    """

    TENTH: ClassVar[Fraction] = Fraction(1, 10)
    TWENTIETH: ClassVar[Fraction] = Fraction(1, 20)
    HUNDREDTH: ClassVar[Fraction] = Fraction(1, 100)

    item: PayItem
    unit: Unit
    stated: Fraction
    limits: Fraction
    strips: Fraction
    at: tuple[Evidence, ...]

    @property
    def share(self) -> Fraction:
        """How much the quantity is above the limits, as a share of them; below is negative.

        Nothing where the strips at the edges, or a part of them, make the difference.
        """
        least = self.limits - self.strips
        if least <= self.stated <= self.limits:
            return Fraction(0)
        return self.stated / (self.limits if self.stated > self.limits else least) - 1

    @property
    def says(self) -> str:
        """Both figures and how far they are apart."""
        more = "more" if self.share > 0 else "less"
        off = show(abs(self.share) * 100, _PLAIN, 1)
        says = (
            f"The limits hold {show(self.limits, self.unit, 0)}, each place once{self._deducted}; "
            f"the quantity is {self.item.quantity}, {off} percent {more}."
        )
        for ratio, what in _SLIPS.items():
            if abs(self.stated / self.limits / ratio - 1) <= self.HUNDREDTH:
                return f"{says} It is {what}."
        return says

    @property
    def _deducted(self) -> str:
        if not self.strips:
            return ""
        return f", and {show(self.limits - self.strips, self.unit, 0)} without the widest strips"

    @property
    def settle(self) -> tuple[str, ...]:
        """The quantity of the limits, or other limits."""
        return (f"quantity {show(self.limits, self.unit, 0)}", "correct the limits")


_PLAIN = Unit("", "number", Fraction(1), "both")
_SLIPS = {
    Fraction(9): "nine times the area: square feet under square yards",
    Fraction(1, 9): "a ninth of the area: square yards under square feet",
    Fraction("0.83612736"): "the figure in square metres",
    1 / Fraction("0.83612736"): "the figure in square yards",
    Fraction(2): "twice the area: both directions or lanes, or one of them counted twice",
    Fraction(1, 2): "half the area: one direction or lane is missing",
}


def compared(job: Job) -> Iterator[Compared]:
    """Every pay item by area whose quantity and limits are both known."""
    for item in job.pay_items.values():
        areas, unit = paid_areas(job, item.id), pay_unit(item.unit)
        if unit is None or unit.dimension != "area" or not areas or item.quantity is None:
            continue
        stated, limits = _point(item.quantity), plan_area(areas)
        if item.quantity.dimension == "area" and stated and limits:
            at = (evidence(item, "quantity", "quantity"), *_stretches(areas))
            strips = _strips(item, areas)
            yield Compared(item=item, unit=unit, stated=stated, limits=limits, strips=strips, at=at)


def _stretches(areas: tuple[Area, ...]) -> Iterator[Evidence]:
    for area in areas:
        for limits in area.limits:
            written = f"{limits.start} to {limits.end}, {given(limits.width)}"
            yield Evidence(path=limits.path, label="limits", written=written)
