"""The worst place of a segment that just passes."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction
from functools import cache
from typing import Any, Literal

from specwriter.model import Area, Job
from specwriter.quantity import Interval
from specwriter.reconcile.governing_ride import localized_governed_by
from specwriter.reconcile.readers.ride import BASE, LOCALIZED, ROUGHNESS
from specwriter.reconcile.relation import Function, Relation, Unassured
from specwriter.trade.ride.lengths import WORST_ERROR, WORST_OVER_SEGMENT, worst_over_segment

_RATIOS = ", ".join(f"{ratio:g} over {feet} ft" for feet, ratio in WORST_OVER_SEGMENT.items())


@cache
def _ratio(base: float, error: float) -> Fraction:
    return Fraction(worst_over_segment(base) - error).limit_denominator(10**4)


def _signs(at: Mapping[str, Interval]) -> dict[str, int | None]:
    return {ROUGHNESS: 1, BASE: -1}


def _shape(error: float, bound: Literal["equal", "at_least"]) -> Function:
    def ratio(at: Mapping[str, Any]) -> Fraction:
        return _ratio(float(at[BASE]), error)

    return Function(
        output=LOCALIZED,
        inputs=(ROUGHNESS, BASE),
        value=lambda at: at[ROUGHNESS] * ratio(at),
        signs=_signs,
        inverses={ROUGHNESS: lambda worst, at: worst / ratio(at)},
        bound=bound,
    )


def _applies(job: Job, area: Area) -> bool:
    return localized_governed_by(job, area) == "segment"


RELATION = Relation(
    slug="localized-of-the-segment",
    title="localized limit and segment limit do not go together",
    statement=(
        "the worst place of a segment is about so many times its roughness index, by the base of "
        f"the localized limit: {_RATIOS}"
    ),
    shape=_shape(WORST_ERROR, "at_least"),
    nominal=_shape(0.0, "equal"),
    why=(
        "Every segment has a worst place. Where the localized limit lies near the "
        "limit of the segment, half of the segments that just pass still go back to "
        "the grinder."
    ),
    source="project calculation: median over segments of 0.1 mi of random surfaces",
    validity=(
        "surfaces without single bumps; half of all segments have a worse place, the ratio moves "
        "by 0.1 with the kind of surface"
    ),
    kind="model",
    assures=Unassured(
        slug="segment-that-passes-breaks-the-localized-limit",
        title="a segment that just passes breaks the localized limit",
    ),
    applies=_applies,
)
