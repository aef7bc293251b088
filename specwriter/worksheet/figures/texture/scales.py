"""A texture depth on the other scale: profile depth (MPD) and patch depth (MTD), by edition."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from specwriter.model import Area, Job
from specwriter.trade import texture_depth
from specwriter.trade.formula import Formula
from specwriter.worksheet.figure import Line
from specwriter.worksheet.inputs import of_area
from specwriter.worksheet.scale import TEXTURE
from specwriter.worksheet.sheet import Sheet, areas

_MILLIMETRE = Fraction(1, 1000)
_VALIDITY = "the named edition alone; the practice warns about grooved surfaces (ASTM E1845-15)"


def figures(job: Job) -> Iterator[Line]:
    """The limit of each area that states a texture depth, on the other scale."""
    for area, sheet in areas(job):
        if area.texture_depth is not None and area.texture_depth.at_least is not None:
            yield _line(area, sheet)


def _line(area: Area, sheet: Sheet) -> Line:
    stated = area.texture_depth
    assert stated is not None
    if stated.measure not in ("MPD", "ETD"):
        title = "the texture limit as MPD"
        return sheet.waiting(title, "a patch depth has no edition that converts it to MPD")
    conversion = texture_depth.conversion_of(stated.method or "", stated.edition or "")
    to_patch = stated.measure == "MPD"
    title = f"the texture limit as {'ETD (scale of MTD)' if to_patch else 'MPD'}"
    if conversion is None:
        return sheet.waiting(title, "not given: an edition whose conversion is known")

    def compute(depth: Fraction) -> Fraction:
        turn = texture_depth.etd_of_mpd if to_patch else texture_depth.mpd_of_etd
        return turn(depth / _MILLIMETRE, conversion) * _MILLIMETRE

    formula = Formula(
        text=f"ETD = {conversion} (mm)",
        source=texture_depth.CONVERSION_SOURCES[conversion],
        validity=_VALIDITY,
    )
    needs = (of_area(area, "texture_depth.at_least"),)
    return sheet.figure(title, formula, TEXTURE, needs, compute)
