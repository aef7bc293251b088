"""Friction limits of one surface for the ribbed and for the smooth tyre, at 40 mph."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction
from typing import Any, Literal

from specwriter.model import Area, Job
from specwriter.quantity import Interval
from specwriter.reconcile.readers.friction import speaks_of
from specwriter.reconcile.relation import Between, Function, Linear, Relation
from specwriter.reconcile.relations.friction import WHY
from specwriter.trade import friction

RIBBED, SMOOTH, TEXTURE = "friction.ribbed", "friction.smooth", "friction.profile_depth"
SPEED_KMH = 40 * 1.609344
ABOVE = 5
"""Skid numbers by which the smooth tyre may exceed the ribbed one: memory, unverified."""


def _bound(side: Literal[1, -1]) -> Function:
    shift = side * friction.SCATTER_OF_TYRES

    def smooth(at: Mapping[str, Any]) -> Any:
        mpd = float(at[TEXTURE]) * 1000
        implied = friction.number_of_other_tyre(float(at[RIBBED]), SPEED_KMH, mpd, "ribbed")
        return Fraction(implied) + shift

    def ribbed(output: Any, at: Mapping[str, Any]) -> Any:
        mpd = float(at[TEXTURE]) * 1000
        other = friction.number_of_other_tyre(float(output - shift), SPEED_KMH, mpd, "smooth")
        return max(other, 0.0)

    return Function(
        output=SMOOTH,
        inputs=(RIBBED, TEXTURE),
        value=smooth,
        signs=lambda at: {RIBBED: 1, TEXTURE: None},
        inverses={RIBBED: ribbed},
        bound="at_most" if side > 0 else "at_least",
    )


def _both(job: Job, area: Area) -> bool:
    return speaks_of(job, area, RIBBED, SMOOTH)


RELATIONS = [
    Relation(
        slug="ribbed-and-smooth-friction",
        title="the friction limits for the ribbed and the smooth tyre do not fit one surface",
        statement=(
            "both tyres on one surface give one friction index: the smooth tyre's number follows "
            f"from the ribbed tyre's and the profile depth, within {friction.SCATTER_OF_TYRES}"
        ),
        shape=Between(_bound(-1), _bound(1)),
        why=WHY,
        source=friction.F60_OF_SKID_NUMBER.source,
        validity=friction.F60_OF_SKID_NUMBER.validity,
        kind="model",
        about=(TEXTURE,),
        applies=_both,
        ways=(
            "keep one limit, or say in each document what its number is for",
            "let a friction test of such a surface settle which number goes with the other",
        ),
    ),
    Relation(
        slug="smooth-above-ribbed",
        title="the smooth tyre is asked for more friction than the ribbed one",
        statement=f"smooth tyre's number is at most the ribbed tyre's + {ABOVE}",
        shape=Linear({SMOOTH: 1, RIBBED: -1}, Interval(None, Fraction(ABOVE))),
        why=(
            "A ribbed tyre carries its own channels for the water, a smooth one needs those of "
            "the surface, so it shows less. A limit the other way round is mostly two figures "
            "interchanged."
        ),
        source="memory, unverified: ribs give the water a way out, so the smooth tyre shows less",
        validity="locked wheel at one speed; deep grooves bring the two nearer to each other",
        kind="experience",
        applies=_both,
        ways=(
            "keep one limit, or say in each document what its number is for",
            "let a friction test of such a surface settle which number goes with the other",
        ),
    ),
]
