"""The half-car index of both wheel paths together against the mean of their own indexes."""

from __future__ import annotations

from fractions import Fraction

from specwriter.model import Area, Job
from specwriter.quantity import Interval
from specwriter.reconcile.readers.ride import HALF_CAR, ROUGHNESS
from specwriter.reconcile.relation import Linear, Relation, Unassured
from specwriter.reconcile.relations.ride import WHY_TWO_LIMITS
from specwriter.reconcile.roughness_of_parts import has_curl, has_steps
from specwriter.reconcile.stated_ride import asks_for_half_car, most
from specwriter.trade.ride.half_car import AT_MOST, OF_UNLIKE_PATHS, UNLIKE_PATHS

_SHARE = Fraction(UNLIKE_PATHS).limit_denominator(1000)
_ABOUT = Linear({HALF_CAR: 1, ROUGHNESS: -_SHARE})


def _both(job: Job, area: Area) -> bool:
    return asks_for_half_car(area) and most(job, area, ROUGHNESS) is not None


def _asks_for_more(job: Job, area: Area) -> bool:
    """Two limits of which the half-car one is below what any surface at the other has, and no
    part of the surface from which each index follows by itself."""
    half, mean = most(job, area, HALF_CAR), most(job, area, ROUGHNESS)
    parts = has_steps(job, area) or has_curl(job, area)
    return half is not None and mean is not None and half < _SHARE * mean and not parts


RELATIONS = [
    Relation(
        slug="half-car-at-most-mean",
        title="the half-car index is asked to be above the mean index",
        statement="half-car index (HRI) is at most the mean index (MRI) of the same two profiles",
        shape=Linear({HALF_CAR: 1, ROUGHNESS: -1}, Interval(None, Fraction(0))),
        why=(
            "The half-car index is never above the mean of the two wheel paths. A limit that has "
            "it above can never decide, so it says nothing."
        ),
        source=AT_MOST.source,
        validity=AT_MOST.validity,
        applies=_both,
    ),
    Relation(
        slug="half-car-and-mean",
        title="half-car index and mean index are not of one quality",
        statement=(
            f"half-car index (HRI) is {UNLIKE_PATHS:.2f} x mean index (MRI) where the wheel paths "
            "have nothing in common, and more where they have"
        ),
        shape=Linear({HALF_CAR: 1, ROUGHNESS: -_SHARE}, Interval(Fraction(0), None)),
        nominal=_ABOUT,
        why=WHY_TWO_LIMITS,
        source=OF_UNLIKE_PATHS.source,
        validity=OF_UNLIKE_PATHS.validity,
        kind="model",
        assures=Unassured(
            slug="half-car-index-stricter-than-its-partner",
            title="half-car index and mean index are not of one quality",
        ),
        applies=_asks_for_more,
    ),
]
