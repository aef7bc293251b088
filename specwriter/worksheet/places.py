"""Stretches of an area as the trade computes with them."""

from __future__ import annotations

import re
from fractions import Fraction

from specwriter.diagnostic import Evidence
from specwriter.model import Area, Limits
from specwriter.quantity import Interval
from specwriter.trade.quantities import Stretch, area_once
from specwriter.worksheet.inputs import Given, Input, Missing, of_node


def inputs_of(limits: Limits) -> tuple[Input, Input, Input]:
    """Start, end and width of a stretch."""
    return (
        of_node(limits, "start", "start of the stretch"),
        of_node(limits, "end", "end of the stretch"),
        of_node(limits, "width", "width of the stretch"),
    )


def stretch_of(limits: Limits) -> Stretch | None:
    """The stretch where its start, end and width are single values; else nothing."""
    ends = [each.as_one() for each in inputs_of(limits) if isinstance(each, Given)]
    points = [end.low for end in ends if end.is_point and end.low is not None]
    if len(points) < 3:
        return None
    start, end, width = points
    return Stretch(
        roadway=limits.roadway or "",
        start=start,
        end=end,
        width=width,
        lanes=lanes_of(limits),
    )


def lanes_of(limits: Limits) -> frozenset[str]:
    """The numbers of the lanes that a stretch names: ``1 to 3`` are three; empty without one."""
    text = limits.lanes or ""
    spans = re.findall(r"(\d{1,2})\s*(?:to|-|–|through)\s*(\d{1,2})(?!\d)", text)
    through = {str(lane) for low, high in spans for lane in range(int(low), int(high) + 1)}
    return frozenset({*re.findall(r"\d+", text), *through})


def evidence(area: Area) -> tuple[Evidence, ...]:
    """One line for each stretch of an area."""
    return tuple(
        Evidence(path=each.path, label=f"stretch {number}", written=_written(each))
        for number, each in enumerate(area.limits, start=1)
    )


def _written(limits: Limits) -> str:
    start, end, width = (
        str(getattr(limits, key) or "not given") for key in ("start", "end", "width")
    )
    lanes = f", lanes {limits.lanes}" if limits.lanes else ""
    return f"{start} to {end}, {width}{lanes}"


def area_of(area: Area) -> Given | Missing:
    """The plan area of an area, each place once."""
    stretches = [stretch_of(each) for each in area.limits]
    known = [each for each in stretches if each is not None]
    if not known or len(known) < len(stretches):
        return Missing(name="start, end and width of every stretch")
    total: Fraction = area_once(known)
    return Given(name="plan area", interval=Interval(total, total), evidence=evidence(area))
