"""Texture depth that the grooves alone give, over all their tolerances."""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.model import Job
from specwriter.trade import texture_depth
from specwriter.trade.formula import Formula
from specwriter.worksheet.figure import Line
from specwriter.worksheet.inputs import bottom, depth, of_area, spacing
from specwriter.worksheet.scale import TEXTURE
from specwriter.worksheet.sheet import areas

FORMULA = Formula(
    text="groove share = mean groove width × groove depth / spacing",
    source="geometry",
    validity="sawn grooves; for a ground surface an upper bound, because fins break",
)
RANDOM = "random pattern: the ends are those of single spacings, the mean lies between"


def figures(job: Job) -> Iterator[Line]:
    """The cross-section of a groove over its spacing."""
    for area, sheet in areas(job):
        needs = (of_area(area, "groove.width"), bottom(area), depth(area), spacing(area))
        yield sheet.figure(
            "texture depth of the grooves alone",
            FORMULA,
            TEXTURE,
            needs,
            texture_depth.groove_share,
            note=RANDOM if area.groove and area.groove.pattern == "random" else "",
        )
