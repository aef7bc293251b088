"""Solids that become residue: volume and mass, on each unit of area, of each area, altogether."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction

from specwriter.diagnostic import Evidence
from specwriter.model import Area, Job
from specwriter.quantity import Interval
from specwriter.trade import removal, texture_depth
from specwriter.worksheet.figure import Line
from specwriter.worksheet.inputs import Given, Missing, bottom, depth, of_area, spacing
from specwriter.worksheet.places import area_of
from specwriter.worksheet.reach import reach
from specwriter.worksheet.scale import DEPTH_OF_SOLIDS, MASS, MASS_PER_AREA, VOLUME
from specwriter.worksheet.sheet import Sheet, areas, evidence_of

_DENSITY = Interval(*removal.DENSITY)
_NOTE = "dry solids at 145 to 150 lb/ft3 (2320 to 2400 kg/m3)"


@dataclass(frozen=True, slots=True)
class _Solids:
    """Mean depth taken from an area, the area itself, and where both stand."""

    depth: Given
    area: Given

    @property
    def evidence(self) -> tuple[Evidence, ...]:
        return evidence_of((self.depth, self.area))

    @property
    def volume(self) -> Interval:
        return reach(removal.volume, (self.area.interval, self.depth.interval))


def figures(job: Job) -> Iterator[Line]:
    """Lines of each area, then of the job where every area can be computed."""
    found = {area.id: _solids(area) for area in job.areas.values()}
    for area, sheet in areas(job):
        solids = found[area.id]
        if isinstance(solids, Missing):
            yield sheet.waiting("volume and mass of solids", f"not given: {solids.name}")
        else:
            yield from _of_area(sheet, solids)
    known = [each for each in found.values() if isinstance(each, _Solids)]
    if len(known) == len(found) > 1:
        yield from _altogether(Sheet(job), known)


def _of_area(sheet: Sheet, solids: _Solids) -> Iterator[Line]:
    formula, mass = removal.VOLUME, removal.SOLIDS
    depth, at = solids.depth.interval, solids.depth.evidence
    each = reach(removal.mass, (depth, _DENSITY))
    yield sheet.of_span("solids from each unit of area", formula, DEPTH_OF_SOLIDS, depth, at)
    yield sheet.of_span("mass of those solids", mass, MASS_PER_AREA, each, at, _NOTE)
    yield from _totals(sheet, "of the area", solids.volume, solids.evidence)


def _altogether(sheet: Sheet, solids: list[_Solids]) -> Iterator[Line]:
    total = Interval(
        _sum([each.volume.low for each in solids]), _sum([each.volume.high for each in solids])
    )
    at = tuple(dict.fromkeys(place for each in solids for place in each.evidence))
    yield from _totals(sheet, "altogether", total, at)


def _sum(ends: list[Fraction | None]) -> Fraction | None:
    known = [end for end in ends if end is not None]
    return sum(known, Fraction(0)) if len(known) == len(ends) else None


def _totals(sheet: Sheet, whose: str, volume: Interval, at: tuple[Evidence, ...]) -> Iterator[Line]:
    mass = reach(removal.mass, (volume, _DENSITY))
    yield sheet.of_span(f"volume of solids {whose}", removal.VOLUME, VOLUME, volume, at)
    yield sheet.of_span(f"mass of solids {whose}", removal.SOLIDS, MASS, mass, at, _NOTE)


def _solids(area: Area) -> _Solids | Missing:
    surface, taken = area_of(area), _depth(area)
    for each in (surface, taken):
        if isinstance(each, Missing):
            return each
    assert isinstance(surface, Given)
    assert isinstance(taken, Given)
    return _Solids(taken, surface)


def _depth(area: Area) -> Given | Missing:
    """Mean depth taken: what is ground away, and under the new surface the grooves.

    The removal of a ground surface reaches to the bottom of its own grooves.
    """
    ground = of_area(area, "removal.depth")
    if area.texture == "diamond_grinding":
        return ground
    grooves = _grooves(area)
    if isinstance(grooves, Missing) or isinstance(ground, Missing):
        return grooves
    span = reach(lambda first, second: first + second, (ground.interval, grooves.interval))
    return Given(name="removal", interval=span, evidence=evidence_of((ground, grooves)))


def _grooves(area: Area) -> Given | Missing:
    needs = (of_area(area, "groove.width"), bottom(area), depth(area), spacing(area))
    given = [each for each in needs if isinstance(each, Given)]
    if len(given) < len(needs):
        return next(each for each in needs if isinstance(each, Missing))
    span = reach(texture_depth.groove_share, [each.interval for each in given])
    return Given(name="volume of the grooves", interval=span, evidence=evidence_of(given))
