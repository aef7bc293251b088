"""Posted speed against the speed from which a tyre may ride up on the film of water."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction
from typing import Any

from specwriter.model import Area, Job
from specwriter.reconcile.relation import Function, Relation
from specwriter.trade import film, hydroplaning

TEXTURE, PATH, RAIN = "wet.texture", "wet.path", "wet.rain"
CROSS, GRADE = "wet.cross_slope", "wet.grade"

_INCH_MM = 25.4
_MPH = Fraction("1609.344") / 3600
_THINNEST_MM = 0.001
"""A film is never taken as thinner: without one there is no onset, and no bound on the speed."""


def onset(at: Mapping[str, Any]) -> Fraction:
    """Onset speed in m/s on the film that the site and the texture give."""
    slope = film.resultant_slope(float(at[CROSS]), float(at.get(GRADE, 0)))
    depth = float(at[TEXTURE]) * 1000
    above = film.film_1979(depth, float(at[PATH]), float(at[RAIN]) * 3.6e6, slope)
    water = max(above, _THINNEST_MM) / _INCH_MM
    return Fraction(hydroplaning.speed_1979(water, depth / _INCH_MM, 24, 3, 10)) * _MPH


def _relation(graded: bool) -> Relation:
    def applies(job: Job, area: Area) -> bool:
        return (job.conditions.grade is not None) is graded

    return Relation(
        slug="posted-speed-above-onset-speed",
        title="a tyre may ride up on water below the posted speed",
        statement=(
            "the 1979 relations of film and onset speed, for a tyre at 24 psi (165 kPa) with 3/32 "
            "in (2.4 mm) of tread and 10 percent spin-down; along the road the grooves lead little "
            "water off, so the land alone counts"
        ),
        shape=Function(
            output="wet.onset_speed",
            inputs=(TEXTURE, PATH, RAIN, CROSS, *((GRADE,) if graded else ())),
            value=onset,
            signs=lambda at: dict.fromkeys(at, None),
        ),
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
