"""Friction at the posted speed, the index F60 and the other tyre, each by a named model."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from specwriter.model import Area, Job
from specwriter.trade import friction, texture_depth
from specwriter.trade.friction_measure import read_measure
from specwriter.worksheet.figure import Line
from specwriter.worksheet.inputs import Given, Input, Missing, of_area, of_site
from specwriter.worksheet.reach import reach
from specwriter.worksheet.scale import INDEX, SKID, SPEED
from specwriter.worksheet.sheet import Sheet, areas

_KMH = Fraction(1000, 3600)


def figures(job: Job) -> Iterator[Line]:
    """Lines of each area that states a skid number; the formulas hold for no other scale."""
    for area, sheet in areas(job):
        if area.friction is None:
            continue
        measure = area.friction.measure
        named = read_measure(measure)
        if measure and (named is None or named.kind != "skid number"):
            yield sheet.waiting(
                "friction number at the posted speed", f"its formulas are not for {measure}"
            )
        else:
            yield from _lines(sheet.job, area, sheet)


def _lines(job: Job, area: Area, sheet: Sheet) -> Iterator[Line]:
    number, speed = of_area(area, "friction.at_least"), of_area(area, "friction.speed")
    posted, mpd = of_site(job, "posted_speed"), profile_depth(area)
    yield sheet.figure(
        "speed number Sp", friction.SPEED_NUMBER, SPEED, (mpd,), _speed_number, as_one=True
    )
    yield sheet.figure(
        "friction number at the posted speed, by the friction index",
        friction.SPEED_CONVERSION,
        SKID,
        (number, speed, posted, mpd),
        _by_index,
        note="the exponential form below answers differently; they are never chained",
        as_one=True,
    )
    yield sheet.figure(
        "friction number at the posted speed, by the exponential form",
        friction.EXPONENTIAL,
        SKID,
        (number, speed, posted, patch_depth(area)),
        _by_exponential,
        as_one=True,
    )
    yield from _of_tyre(area, sheet, (number, speed, mpd))


def _of_tyre(area: Area, sheet: Sheet, needs: tuple[Input, ...]) -> Iterator[Line]:
    tyre = area.friction.tyre if area.friction else None
    formula = friction.F60_OF_SKID_NUMBER
    if tyre is None:
        yield sheet.waiting("friction index F60", "not given: tyre of the friction test")
        return

    def f60(number: Fraction, speed: Fraction, mpd: Fraction) -> float:
        return friction.f60_of_skid_number(float(number), _kmh(speed), _mm(mpd), tyre)

    def other(number: Fraction, speed: Fraction, mpd: Fraction) -> float:
        return friction.number_of_other_tyre(float(number), _kmh(speed), _mm(mpd), tyre)

    yield sheet.figure("friction index F60", formula, INDEX, needs, f60, as_one=True)
    name = "smooth" if tyre == "ribbed" else "ribbed"
    title = f"friction number with the {name} tyre, implied"
    yield sheet.figure(title, formula, SKID, needs, other, as_one=True)


def profile_depth(area: Area) -> Input:
    """MPD that the area asks for, straight or by the edition that it names."""
    stated, limit = area.texture_depth, of_area(area, "texture_depth.at_least")
    if stated is None or isinstance(limit, Missing):
        return Missing(name="texture depth as MPD")
    if stated.measure == "MPD":
        return limit
    conversion = texture_depth.conversion_of(stated.method or "", stated.edition or "")
    if stated.measure != "ETD" or conversion is None:
        return Missing(name="texture depth as MPD")
    span = reach(
        lambda depth: texture_depth.mpd_of_etd(depth * 1000, conversion) / 1000, (limit.interval,)
    )
    return Given(name="texture depth as MPD", interval=span, evidence=limit.evidence)


def patch_depth(area: Area) -> Input:
    """MTD or ETD that the area asks for."""
    stated = area.texture_depth
    if stated is None or stated.measure not in ("MTD", "ETD"):
        return Missing(name="texture depth as MTD")
    return of_area(area, "texture_depth.at_least")


def _speed_number(mpd: Fraction) -> float:
    return friction.speed_number(_mm(mpd)) * float(_KMH)


def _by_index(number: Fraction, speed: Fraction, posted: Fraction, mpd: Fraction) -> float:
    sp = friction.speed_number(_mm(mpd))
    return float(number) * friction.speed_factor(_kmh(speed), _kmh(posted), sp)


def _by_exponential(number: Fraction, speed: Fraction, posted: Fraction, mtd: Fraction) -> float:
    measured = friction.SkidNumber(value=float(number), speed=_kmh(speed))
    model: friction.SpeedModel = "exponential skid number"
    return friction.skid_number_at(measured, _kmh(posted), model, mpd=1, mtd=_mm(mtd)).value


def _kmh(speed: Fraction) -> float:
    return float(speed / _KMH)


def _mm(depth: Fraction) -> float:
    return float(depth * 1000)
