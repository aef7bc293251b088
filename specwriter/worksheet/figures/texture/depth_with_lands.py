"""Texture depth of grooves and lands together."""

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
    text="texture depth = groove share + (1 - groove width / spacing) × texture of the land",
    source="geometry",
    validity="sawn grooves; a ground surface lies within 0.2 mm (project judgement)",
)


def figures(job: Job) -> Iterator[Line]:
    """What a sand patch over grooves and lands would find."""
    for area, sheet in areas(job):
        needs = (
            of_area(area, "groove.width"),
            bottom(area),
            depth(area),
            spacing(area),
            of_area(area, "texture_depth.land_texture"),
        )
        yield sheet.figure(
            "texture depth of grooves and lands",
            FORMULA,
            TEXTURE,
            needs,
            texture_depth.texture_depth,
        )
