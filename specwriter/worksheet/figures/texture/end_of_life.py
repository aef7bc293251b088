"""Texture depth left at the end of life, by the published loss."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from specwriter.model import Job
from specwriter.quantity import Interval
from specwriter.trade import wear
from specwriter.worksheet.figure import Line
from specwriter.worksheet.inputs import Given, of_area
from specwriter.worksheet.scale import TEXTURE
from specwriter.worksheet.sheet import areas

TITLE = "texture depth at end of life, from the initial limit"


def figures(job: Job) -> Iterator[Line]:
    """The initial limit less the published loss of that texture."""
    for area, sheet in areas(job):
        if area.texture_depth is None:
            continue
        loss = wear.LOSS_MM.get(area.texture)
        initial = of_area(area, "texture_depth.at_least")
        if not isinstance(initial, Given):
            yield sheet.waiting(TITLE, "not given: texture depth")
        elif loss is None:
            yield sheet.waiting(TITLE, "no loss is published for this texture")
        else:
            start = initial.interval.low if initial.interval.low is not None else Fraction(0)
            left = wear.end_of_life(Interval(start * 1000, start * 1000), loss)
            assert left.low is not None
            assert left.high is not None
            span = Interval(left.low / 1000, left.high / 1000)
            yield sheet.of_span(TITLE, wear.PUBLISHED_LOSS, TEXTURE, span, initial.evidence)
