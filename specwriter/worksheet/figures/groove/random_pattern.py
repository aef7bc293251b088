"""What a random pattern is on the whole: its mean spacing and the texture depth of its grooves."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from specwriter.model import Area, Job
from specwriter.quantity import Interval
from specwriter.trade import texture_depth
from specwriter.trade.formula import Formula
from specwriter.worksheet.figure import Line
from specwriter.worksheet.inputs import Given, Missing, bottom, depth, of_area
from specwriter.worksheet.scale import CUT, TEXTURE
from specwriter.worksheet.sheet import Sheet, areas, evidence_of

MEAN = Formula(
    text="mean spacing from share × least + (1 - share) × close to share × close + (1 - share) × "
    "greatest spacing",
    source="arithmetic",
    validity="the stated share is close and no more; with more the mean is less",
)
DEPTH = Formula(
    text="groove share = mean groove width × groove depth / mean spacing",
    source="geometry: the grooves of a length hold their volume whatever their order",
    validity="sawn grooves over a length of many spacings",
)


def figures(job: Job) -> Iterator[Line]:
    """Two lines for each random pattern with a share of close spacings."""
    for area, sheet in areas(job):
        groove = area.groove
        if groove is not None and groove.pattern == "random" and groove.close_share is not None:
            yield from _lines(area, sheet)


def _lines(area: Area, sheet: Sheet) -> Iterator[Line]:
    title = "mean spacing of the random pattern"
    keys = ("groove.spacing", "groove.close_spacing", "groove.close_share")
    needs = [of_area(area, key) for key in keys]
    missing = [each.name for each in needs if isinstance(each, Missing)]
    if missing:
        yield sheet.waiting(title, "not given: " + ", ".join(missing))
        return
    spacing, close, share = (each for each in needs if isinstance(each, Given))
    span = _mean(spacing.interval, close.as_one().high, share.as_one().low)
    yield sheet.of_span(title, MEAN, CUT, span, evidence_of((spacing, close, share)))
    mean = Given(name="mean spacing", interval=span, evidence=spacing.evidence)
    cross = (of_area(area, "groove.width"), bottom(area), depth(area), mean)
    title = "texture depth of the grooves alone, over the random pattern"
    yield sheet.figure(title, DEPTH, TEXTURE, cross, texture_depth.groove_share)


def _mean(spacing: Interval, close: Fraction | None, share: Fraction | None) -> Interval:
    low, high = spacing.low, spacing.high
    if low is None or high is None or close is None or share is None:
        return spacing
    return Interval(share * low + (1 - share) * close, share * close + (1 - share) * high)
