"""Posted speed against the speed from which a tyre may ride up on the film of water."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction
from math import sqrt
from typing import Any

from specwriter.model import Area, Job
from specwriter.reconcile.relation import Function, Relation
from specwriter.trade import film, hydroplaning

TEXTURE, PATH, RAIN = "wet.texture", "wet.path", "wet.rain"
CROSS, GRADE = "wet.cross_slope", "wet.grade"

_INCH_MM, _MM_PER_H = 25.4, 3.6e6
_MPH = Fraction("1609.344") / 3600
_THINNEST_MM = 0.001
"""A film is never taken as thinner: without one there is no onset, and no bound on the speed."""

_ROUNDING = Fraction(1, 10**10)
"""Share granted between a computed speed and the input computed back from it in floats."""


_TYRE = {"pressure_psi": 24, "tread_32nds": 3, "spin_down": 10}


def _texture_mm(at: Mapping[str, Any]) -> float:
    """The texture, taken as the finest of the relation where it is finer."""
    return max(float(at[TEXTURE]) * 1000, film.FINEST_1979)


def _slope(at: Mapping[str, Any], graded: bool) -> float:
    return film.resultant_slope(float(at[CROSS]), float(at[GRADE]) if graded else 0.0)


def onset(at: Mapping[str, Any], graded: bool) -> Fraction:
    """Onset speed in m/s on the film that the site and the texture give."""
    depth, rain = _texture_mm(at), float(at[RAIN]) * _MM_PER_H
    above = film.film_1979(depth, float(at[PATH]), rain, _slope(at, graded))
    water = max(above, _THINNEST_MM) / _INCH_MM
    return Fraction(hydroplaning.speed_1979(water, depth / _INCH_MM, **_TYRE)) * _MPH


def _film_mm(speed: Any, at: Mapping[str, Any]) -> float:
    """The film on which the onset is at ``speed`` (m/s); ``ValueError`` where it is too thin."""
    thick = hydroplaning.film_at_1979(float(speed / _MPH), _texture_mm(at) / _INCH_MM, **_TYRE)
    if thick * _INCH_MM <= _THINNEST_MM * 1.001:
        raise ValueError("every thinner film counts alike")
    return float(thick * _INCH_MM)


def _shape(graded: bool) -> Function:
    """The onset speed: path and rain thicken the film and lower it, slope raises it."""

    def path(speed: Any, at: Mapping[str, Any]) -> float:
        rain = float(at[RAIN]) * _MM_PER_H
        return film.path_of_1979(_film_mm(speed, at), _texture_mm(at), rain, _slope(at, graded))

    def rain(speed: Any, at: Mapping[str, Any]) -> float:
        thick, depth = _film_mm(speed, at), _texture_mm(at)
        return film.rain_of_1979(thick, depth, float(at[PATH]), _slope(at, graded)) / _MM_PER_H

    def cross(speed: Any, at: Mapping[str, Any]) -> float:
        thick, depth, rain = _film_mm(speed, at), _texture_mm(at), float(at[RAIN]) * _MM_PER_H
        slope = film.slope_of_1979(thick, depth, float(at[PATH]), rain)
        return sqrt(max(0.0, slope**2 - (float(at[GRADE]) if graded else 0.0) ** 2))

    return Function(
        output="wet.onset_speed",
        inputs=(TEXTURE, PATH, RAIN, CROSS, *((GRADE,) if graded else ())),
        value=lambda at: onset(at, graded),
        signs=lambda at: dict.fromkeys(at, 1) | {TEXTURE: None, PATH: -1, RAIN: -1},
        inverses={PATH: path, RAIN: rain, CROSS: cross},
        scatter=_ROUNDING,
    )


def _relation(graded: bool) -> Relation:
    def applies(job: Job, area: Area) -> bool:
        return (job.conditions.grade is not None) is graded

    return Relation(
        slug="posted-speed-above-onset-speed",
        title="a tyre may ride up on water below the posted speed",
        statement=(
            "the 1979 relations of film and onset speed, for a tyre at 24 psi (165 kPa) with 3/32 "
            "in (2.4 mm) of tread and 10 percent spin-down; grooves along the road lead little "
            "water off, so there the land alone counts"
        ),
        shape=_shape(graded),
        why=(
            "On a film of water a tyre can lose the road. The relations say from which "
            "speed it may, for one tyre and steady rain; a posted speed above that asks "
            "for a second look at slope, texture and drainage."
        ),
        source=f"{film.FILM_1979.source}; {hydroplaning.SPEED_1979.source}",
        validity=(
            "an indication, never a proof of safety, for steady rain on a plane surface and one "
            "car tyre; slope 0.5 to 8 percent, rain to 150 mm/h, path to 15 m (ranges from "
            "memory, unverified); the film on tined slabs was found thicker than computed"
        ),
        kind="model",
        applies=applies,
        ways=(
            "more texture, more cross slope or a shorter path of the water",
            "let the engineer of record judge the site with its own rain and tyres",
        ),
    )


RELATIONS = [_relation(graded) for graded in (False, True)]
