"""Friction limits of one surface for one tyre at 40 mph and at another speed."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction
from math import log
from typing import Any, Literal

from specwriter.reconcile.readers.friction import speaks_of
from specwriter.reconcile.relation import Between, Function, Relation
from specwriter.reconcile.relations.friction import WHY
from specwriter.trade import friction

TEXTURE, SPEED = "friction.profile_depth", "friction.other_speed"
SLOW_KMH = 40 * 1.609344
GRANTED = 3
"""Skid numbers granted beside what the two models span (project judgement)."""


def factors(texture_mm: float, speed_kmh: float) -> tuple[float, float]:
    """The number at a speed over that at 40 mph, by both models, the smaller first."""
    found = []
    for model in ("friction index", "exponential skid number"):
        slow = friction.SkidNumber(value=1, speed=SLOW_KMH)
        at = friction.skid_number_at(slow, speed_kmh, model, mpd=texture_mm, mtd=texture_mm)
        found.append(at.value)
    return min(found), max(found)


def speeds(texture_mm: float, factor: float) -> tuple[float, float]:
    """The speeds in km/h at which the number has so fallen, by both models, the lower first."""
    fall = -log(factor)
    index = SLOW_KMH + friction.speed_number(texture_mm) * fall
    exponential = SLOW_KMH + 100 * fall / friction.gradient(texture_mm / 25.4) * 1.609344
    return min(index, exponential), max(index, exponential)


def _factor(at: Mapping[str, Any], side: Literal[1, -1]) -> Fraction:
    low, high = factors(float(at[TEXTURE]) * 1000, float(at[SPEED]) * 3.6)
    return Fraction(high if side > 0 else low)


def _bound(tyre: str, side: Literal[1, -1]) -> Function:
    slow = f"friction.{tyre}"

    def speed(out: Any, at: Mapping[str, Any]) -> float:
        low, high = speeds(float(at[TEXTURE]) * 1000, float(out - side * GRANTED) / float(at[slow]))
        return (high if side > 0 else low) / 3.6

    return Function(
        output=f"friction.{tyre}_elsewhere",
        inputs=(slow, TEXTURE, SPEED),
        value=lambda at: at[slow] * _factor(at, side) + side * GRANTED,
        signs=lambda at: {slow: 1, TEXTURE: None, SPEED: -1},
        inverses={
            slow: lambda out, at: max((out - side * GRANTED) / _factor(at, side), 0),
            SPEED: speed,
        },
        bound="at_most" if side > 0 else "at_least",
    )


def _relation(tyre: str) -> Relation:
    numbers = f"friction.{tyre}", f"friction.{tyre}_elsewhere"
    return Relation(
        slug="friction-at-two-speeds",
        title="the friction limits at two speeds do not fit one surface",
        statement=(
            "the number at one speed lies between what the friction index and the exponential "
            f"form, each by itself, give from the number at 40 mph, within {GRANTED}"
        ),
        shape=Between(_bound(tyre, -1), _bound(tyre, 1)),
        why=WHY,
        source=f"{friction.SPEED_CONVERSION.source}; {friction.EXPONENTIAL.source}",
        validity=(
            "locked wheel and one tyre; the two models differ by more than 10 on a fine texture, "
            "and the profile depth stands for the patch depth in the exponential form"
        ),
        kind="model",
        about=(TEXTURE,),
        applies=lambda job, area: speaks_of(job, area, *numbers),
        ways=(
            "keep one limit, or say in each document what its number is for",
            "let a friction test of such a surface settle which number goes with the other",
        ),
    )


RELATIONS = [_relation(tyre) for tyre in ("ribbed", "smooth")]
