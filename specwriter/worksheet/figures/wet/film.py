"""Path of the water, film on the surface, and the speed from which a tyre may ride up on it."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from fractions import Fraction

from specwriter.model import Area, Job
from specwriter.quantity import Interval
from specwriter.trade import film, hydroplaning
from specwriter.trade.formula import Formula
from specwriter.worksheet.figure import Line
from specwriter.worksheet.inputs import Given, Input, Missing, of_area, of_node, of_site
from specwriter.worksheet.reach import reach
from specwriter.worksheet.scale import PERCENT, SPEED, TEXTURE, WIDTH, Scale
from specwriter.worksheet.sheet import Sheet, areas, evidence_of

INDICATION = "an indication, never a proof of safety"

_ALONG = ("longitudinal_grooving", "next_generation_concrete_surface")
_INCH = Fraction("0.0254")
_MILE_PER_HOUR = Fraction("1609.344") / 3600
_MILLIMETRE_PER_HOUR = Fraction(1, 3_600_000)
_TITLE = "film of water above the texture"
_TYRE = "tyre at 24 psi (165 kPa) with 3/32 in (2.4 mm) of tread, 10 percent spin-down"


def figures(job: Job) -> Iterator[Line]:
    """Lines of each area, where the job speaks of rain at all."""
    if job.conditions.rainfall is None:
        return
    for area, sheet in areas(job):
        yield from _lines(sheet.job, area, sheet)


def _lines(job: Job, area: Area, sheet: Sheet) -> Iterator[Line]:
    cross, grade = of_site(job, "cross_slope"), _grade(job)
    width, stated = _width(area), of_site(job, "drainage_path")
    slope = _made("slope of the water's path", (cross, grade), film.resultant_slope)
    path = stated
    if isinstance(stated, Missing):
        path = _made("path of the water", (width, cross, grade), film.drainage_path)
        yield _shown(sheet, path, WIDTH, "the whole width drains to one side")
    yield _shown(sheet, slope, PERCENT, "" if grade.evidence else "grade not given: level")
    needs = (_texture(area), path, of_site(job, "rainfall"), slope)
    missing = [each.name for each in needs if isinstance(each, Missing)]
    given = [each for each in needs if isinstance(each, Given)]
    if missing:
        yield sheet.waiting(_TITLE, "not given: " + ", ".join(missing))
    elif outside := _outside(given):
        yield sheet.waiting(_TITLE, f"outside the validity of the formula: {', '.join(outside)}")
    else:
        yield from _film(sheet, given)


def _film(sheet: Sheet, given: list[Given]) -> Iterator[Line]:
    yield sheet.figure(_TITLE, film.FILM_1979, TEXTURE, given, _depth, note=INDICATION, as_one=True)
    for title, formula, compute in _OTHERS:
        yield sheet.figure(title, formula, TEXTURE, given, compute, note=INDICATION, as_one=True)
    at = evidence_of(given)
    thickest = reach(_depth, [each.as_one() for each in given]).high
    coarse = given[0].as_one()
    assert thickest is not None
    for year, formula, speed in _SPEEDS:
        title = f"onset speed on the thickest film, relation of {year}"
        if thickest <= 0:
            yield sheet.waiting(title, "the water stays inside the texture")
            continue
        depth = Interval(thickest, thickest)
        span = reach(speed, (depth, coarse))
        yield sheet.of_span(title, formula, SPEED, span, at, f"{_TYRE}; {INDICATION}")


def _speed_1979(depth: Fraction, texture: Fraction) -> Fraction:
    inches = float(depth / _INCH), float(texture / _INCH)
    return Fraction(hydroplaning.speed_1979(*inches, 24, 3, 10)) * _MILE_PER_HOUR


def _speed_1998(depth: Fraction, texture: Fraction) -> Fraction:
    inches = float(depth / _INCH), float(texture / _INCH)
    return Fraction(hydroplaning.speed_1998(*inches)) * _MILE_PER_HOUR


_SPEEDS: tuple[tuple[int, Formula, Callable[[Fraction, Fraction], Fraction]], ...] = (
    (1979, hydroplaning.SPEED_1979, _speed_1979),
    (1998, hydroplaning.SPEED_1998, _speed_1998),
)


def _depth(texture: Fraction, path: Fraction, rain: Fraction, slope: Fraction) -> float:
    return film.film_1979(*_fitted(texture, path, rain, slope)) / 1000


def _depth_1998(texture: Fraction, path: Fraction, rain: Fraction, slope: Fraction) -> float:
    fitted = _fitted(texture, path, rain, slope)
    n = film.roughness_of_concrete(film.reynolds(*fitted[1:3]))
    return film.film_1998(*fitted, n) / 1000


def _depth_1968(texture: Fraction, path: Fraction, rain: Fraction, slope: Fraction) -> float:
    return film.depth_1968(*_fitted(texture, path, rain, slope)[1:]) / 1000


_OTHERS: tuple[tuple[str, Formula, Callable[..., float]], ...] = (
    (f"{_TITLE}, relation of 1998 on concrete", film.FILM_1998, _depth_1998),
    ("total depth of water, relation of 1968", film.FILM_1968, _depth_1968),
)


def _fitted(
    texture: Fraction, path: Fraction, rain: Fraction, slope: Fraction
) -> tuple[float, float, float, float]:
    """Base units as the relation takes them: mm, m, mm/h, ratio."""
    return float(texture * 1000), float(path), float(rain / _MILLIMETRE_PER_HOUR), float(slope)


def _outside(given: list[Given]) -> list[str]:
    """Inputs beyond the ranges of the relation, at either end."""
    ends = [each.as_one() for each in given]
    found = {
        name
        for side in ("low", "high")
        for name in film.outside_1979(*_fitted(*(getattr(each, side) for each in ends)))
    }
    return sorted(found)


def _made(name: str, needs: tuple[Input, ...], compute: Callable[..., float]) -> Input:
    """An input that is computed from others, or the first of them that is missing."""
    given = [each for each in needs if isinstance(each, Given)]
    if len(given) < len(needs):
        return next(each for each in needs if isinstance(each, Missing))
    span = reach(lambda *each: compute(*map(float, each)), [each.as_one() for each in given])
    return Given(name=name, interval=span, evidence=evidence_of(given))


def _shown(sheet: Sheet, made: Input, scale: Scale, note: str) -> Line:
    if isinstance(made, Missing):
        return sheet.waiting("path and slope of the water", f"not given: {made.name}")
    return sheet.of_span(made.name, film.PATH, scale, made.interval, made.evidence, note)


def _grade(job: Job) -> Given:
    stated = of_site(job, "grade")
    level = Given(name="grade", interval=Interval(Fraction(0), Fraction(0)), evidence=())
    return stated if isinstance(stated, Given) else level


def _width(area: Area) -> Input:
    """The widest stretch of the area."""
    widths = [of_node(each, "width", "width of the stretch") for each in area.limits]
    given = [each for each in widths if isinstance(each, Given)]
    if not given:
        return Missing(name="path of the water, or a width")
    return max(given, key=lambda each: each.as_one().high or Fraction(0))


def _texture(area: Area) -> Input:
    """Texture that holds water: along the traffic, grooves drain little, so the land alone counts.

    A conservative convention of the project.
    """
    path = "land_texture" if area.texture in _ALONG else "at_least"
    return of_area(area, f"texture_depth.{path}")
