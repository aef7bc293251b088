"""What the job states of the ride, for relations that depend on it."""

from __future__ import annotations

from fractions import Fraction

from specwriter.model import Area, Job
from specwriter.model.results import Straightedge
from specwriter.quantity import Quantity
from specwriter.reconcile.readers import ride
from specwriter.reconcile.requirement import sources
from specwriter.trade.ride import INCH, INCH_PER_MILE
from specwriter.trade.ride.lengths import worst_over_segment
from specwriter.trade.ride.straightedge import ON_RANDOM

_WITHOUT_JOINTS = ("continuously_reinforced_concrete", "asphalt", "airfield_asphalt")

SURFACE = next(row for row in ON_RANDOM if row.mri == 100)
"""The random surface from which gaps under a straightedge are taken, in proportion."""

GAP_PER_ROUGHNESS = Fraction(
    SURFACE.gap_99[0] * INCH / (SURFACE.mri * INCH_PER_MILE)
).limit_denominator(10**6)
"""Gap that one placement in a hundred exceeds, metres for a slope of 1."""


def most(job: Job, area: Area, variable: str) -> Fraction | None:
    """The greatest value that every statement on a variable of the ride allows."""
    highs = [
        each.interval.high
        for each in ride.read(job, area)
        if each.variable == variable and each.interval.high is not None
    ]
    return min(highs, default=None)


def demanded(job: Job, area: Area) -> Fraction | None:
    """The improvement that limit or improvement ask for, as a share of the existing MRI."""
    asked = [
        each.interval.low
        for each in ride.read(job, area)
        if each.variable == ride.IMPROVEMENT and each.interval.low is not None
    ]
    limit, existing = most(job, area, ride.ROUGHNESS), job.conditions.existing_mri
    if limit is not None and existing is not None and existing.interval.low:
        asked.append(1 - limit / existing.interval.low)
    return max(asked, default=None)


def lies_within(quantity: Quantity | None, low: float, high: float) -> bool:
    """True where both ends of what is stated lie between two values in SI units."""
    if quantity is None:
        return False
    ends = (quantity.interval.low, quantity.interval.high)
    return all(end is not None and low <= float(end) <= high for end in ends)


def has_step_limit(area: Area) -> bool:
    """True where a limit on the steps left at joints is stated anywhere."""
    return any(each.joint_match is not None for each in sources(area))


def asks_for_half_car(area: Area) -> bool:
    """True where a limit of the half-car index is stated anywhere."""
    rides = [each.smoothness for each in sources(area) if each.smoothness is not None]
    return any(each.index == "HRI" and each.limit is not None for each in rides)


def segment_breaks_localized(job: Job, area: Area) -> bool:
    """True where the worst place of a segment that just passes exceeds the localized limit,
    and the localized limit is not below that of the segment itself."""
    segment, short = most(job, area, ride.ROUGHNESS), most(job, area, ride.LOCALIZED)
    base = most(job, area, ride.BASE)
    if segment is None or short is None or base is None:
        return False
    return segment <= short < segment * Fraction(worst_over_segment(float(base)))


def step_governs_straightedge(job: Job, area: Area) -> bool:
    """True where a straightedge is laid across joints and the greatest step that is allowed
    there opens a wider gap than a surface at the limit of the roughness index."""
    edges = [each.straightedge for each in sources(area) if each.straightedge is not None]
    step = min(
        (each.joint_match.interval.high or 0 for each in sources(area) if each.joint_match),
        default=None,
    )
    if not edges or step is None or job.conditions.pavement in _WITHOUT_JOINTS:
        return False
    limit = most(job, area, ride.ROUGHNESS) or 0
    return all(map(_crosses_joints, edges)) and step >= limit * GAP_PER_ROUGHNESS


def _crosses_joints(edge: Straightedge) -> bool:
    """True for an edge said to lie along the lane, unless its test speaks of joints."""
    where = edge.test.where if edge.test is not None else None
    return edge.direction in ("longitudinal", "both") and "joint" not in (where or "").lower()


def lies_on(value: Fraction | None, length: float) -> bool:
    """True for a length in metres, and for its soft conversions."""
    return value is not None and abs(float(value) - length) < 0.02 * length
