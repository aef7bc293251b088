"""A noise limit at another speed, at the roadside, at another temperature, and what is reached."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from typing import Literal

from specwriter.model import Area, Job
from specwriter.model.results import Noise
from specwriter.quantity import Interval
from specwriter.trade import sound
from specwriter.trade.formula import Formula
from specwriter.worksheet.figure import Line
from specwriter.worksheet.inputs import Given, of_area
from specwriter.worksheet.scale import DECIBEL
from specwriter.worksheet.sheet import Sheet, areas

_STANDARD = Fraction(sound.STANDARD_SPEED_MPH) * Fraction("1609.344") / 3600
_SLOPE = Given(name="k", interval=Interval(*map(Fraction, sound.SLOPE_RANGE)), evidence=())
_DISTANCES: tuple[Literal[25, 50], ...] = (25, 50)


def figures(job: Job) -> Iterator[Line]:
    """Lines of each area that limits its noise."""
    for area, sheet in areas(job):
        if area.noise is None:
            continue
        limit = of_area(area, "noise.at_most")
        if not isinstance(limit, Given):
            yield sheet.waiting("noise limit by other conditions", f"not given: {limit.name}")
        elif area.noise.measure == "roadside":
            yield _source_behind(area.noise, sheet, limit)
        else:
            yield from _of_source(area, sheet, limit)


def _source_behind(noise: Noise, sheet: Sheet, limit: Given) -> Line:
    """The level beside the tyre behind a limit at the roadside."""
    title = "level beside the tyre (OBSI) behind the roadside limit"
    where = f"{noise.test.where or ''} {noise.test.method or ''}" if noise.test else ""
    feet = sound.microphone_distance(where)
    if feet is None:
        return sheet.waiting(title, "the test names no distance of 25 ft or 50 ft")
    level, deviation = sound.source_behind(0, feet)
    return sheet.figure(
        title,
        sound.ROADSIDE,
        DECIBEL,
        (limit,),
        lambda roadside: float(roadside) + level,
        note=f"one standard deviation {deviation} dB",
        as_one=True,
    )


def _of_source(area: Area, sheet: Sheet, limit: Given) -> Iterator[Line]:
    speed = of_area(area, "noise.speed")
    if not isinstance(speed, Given) or speed.as_one() != Interval(_STANDARD, _STANDARD):
        title = "noise limit at 60 mph (97 km/h)"
        needs = (limit, speed, _SLOPE)
        if isinstance(speed, Given) and not _is_known(speed):
            because = f"outside the validity of the formula: {sound.SPEED_SLOPE.validity}"
            yield sheet.waiting(title, because)
        else:
            yield sheet.figure(title, sound.SPEED_SLOPE, DECIBEL, needs, _at_60, as_one=True)
    for feet in _DISTANCES:
        yield _roadside(sheet, limit, feet)
    yield _at_30_degrees(sheet, limit)
    yield _reached(area, sheet)


def _is_known(speed: Given) -> bool:
    ends = (end for end in speed.as_one() if end is not None)
    return all(sound.is_known_speed(float(end * 60 / _STANDARD)) for end in ends)


def _at_60(level: Fraction, speed: Fraction, slope: Fraction) -> float:
    return float(level) + sound.level_change(float(speed), float(_STANDARD), float(slope))


def _roadside(sheet: Sheet, limit: Given, feet: Literal[25, 50]) -> Line:
    level, deviation = sound.roadside(0, feet)
    return sheet.figure(
        f"light vehicle at {feet} ft ({feet * 0.3048:.1f} m) of a surface at the limit",
        sound.ROADSIDE,
        DECIBEL,
        (limit,),
        lambda source: float(source) + level,
        note=f"one standard deviation {deviation} dB",
        as_one=True,
    )


def _at_30_degrees(sheet: Sheet, limit: Given) -> Line:
    added = sorted(Fraction(level) for level in sound.at_20_degrees(0, 30).values())
    title = "added to a level measured at 30 °C"
    span = Interval(added[0], added[-1])
    note = "the contract is to name the correction"
    return sheet.of_span(title, sound.TEMPERATURE, DECIBEL, span, limit.evidence, note)


def _reached(area: Area, sheet: Sheet) -> Line:
    title = "levels that the texture reaches, new to aged"
    band = sound.BANDS.get(area.texture)
    if band is None:
        return sheet.waiting(title, "no band is known for this texture")
    formula = Formula(text="band of levels", source=band.source, validity="at 60 mph (97 km/h)")
    span = Interval(Fraction(band.quietest), Fraction(band.loudest))
    return sheet.of_span(title, formula, DECIBEL, span, ())
