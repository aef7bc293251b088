"""Groove depth and texture of the land that a limit of texture depth needs."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from specwriter.model import Area, Job
from specwriter.trade import groove_geometry, texture_depth
from specwriter.trade.formula import Formula
from specwriter.worksheet.figure import Line
from specwriter.worksheet.inputs import Given, bottom, depth, of_area, spacing
from specwriter.worksheet.scale import CUT, TEXTURE
from specwriter.worksheet.sheet import Sheet, areas

_VALIDITY = "sawn grooves at the values written; a ground surface needs more, because ridges break"
OF_GROOVE = Formula(
    text="depth = (limit - (1 - groove width / spacing) × texture of the land) × spacing / mean "
    "groove width, not below 0",
    source="geometry",
    validity=_VALIDITY,
)
OF_LAND = Formula(
    text="texture of the land = (limit - groove share) / (1 - groove width / spacing), not below 0",
    source="geometry",
    validity=_VALIDITY,
)


def figures(job: Job) -> Iterator[Line]:
    """Two lines for each area with a limit of patch depth over its grooves, where both can be."""
    for area, sheet in areas(job):
        stated = area.texture_depth
        if stated is None or stated.measure == "MPD" or stated.surface == "between_grooves":
            continue
        if isinstance(of_area(area, "texture_depth.at_least"), Given):
            yield from _lines(area, sheet)


def _lines(area: Area, sheet: Sheet) -> Iterator[Line]:
    limit, land = (of_area(area, f"texture_depth.{key}") for key in ("at_least", "land_texture"))
    cut = (of_area(area, "groove.width"), bottom(area))
    if isinstance(land, Given):
        title = "groove depth that the texture limit needs"
        of_depth = (*cut, spacing(area), land, limit)
        yield sheet.figure(title, OF_GROOVE, CUT, of_depth, _depth, as_one=True)
    title = "texture of the land that the texture limit needs"
    of_land = (*cut, depth(area), spacing(area), limit)
    yield sheet.figure(title, OF_LAND, TEXTURE, of_land, _land, as_one=True)


def _depth(
    width: Fraction, below: Fraction, pitch: Fraction, land: Fraction, limit: Fraction
) -> Fraction:
    left = limit - (1 - groove_geometry.kerf_share(width, pitch)) * land
    return max(Fraction(0), left * pitch / ((width + below) / 2))


def _land(
    width: Fraction, below: Fraction, deep: Fraction, pitch: Fraction, limit: Fraction
) -> Fraction:
    share = texture_depth.groove_share(width, below, deep, pitch)
    kerf = groove_geometry.kerf_share(width, pitch)
    return max(Fraction(0), texture_depth.land_texture_needed(share, kerf, limit))
