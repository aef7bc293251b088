"""What the job states of the ride, for relations that depend on it."""

from __future__ import annotations

from fractions import Fraction

from specwriter.model import Area, Job
from specwriter.quantity import Quantity
from specwriter.reconcile.cutting import is_ground
from specwriter.reconcile.per_area import per_area
from specwriter.reconcile.readers import ride
from specwriter.reconcile.requirement import sources


def most(job: Job, area: Area, variable: str) -> Fraction | None:
    """The greatest value that every statement on a variable of the ride allows."""
    return _highs(job, area).get(variable)


@per_area
def _highs(job: Job, area: Area) -> dict[str, Fraction]:
    """The least upper end that is stated of each variable of the ride."""
    found: dict[str, Fraction] = {}
    for each in ride.read(job, area):
        high = each.interval.high
        if high is not None:
            found[each.variable] = min(high, found.get(each.variable, high))
    return found


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


def leaves_steps(job: Job, area: Area) -> bool:
    """True where faulting is known, and a limit on removal, or on what it must leave of slab,
    joint or cover, may leave some of it."""
    limited = any(each.removal is not None for each in sources(area))
    return job.conditions.existing_faulting is not None and is_ground(area) and limited


def asks_for_half_car(area: Area) -> bool:
    """True where a limit of the half-car index is stated anywhere."""
    rides = [each.smoothness for each in sources(area) if each.smoothness is not None]
    return any(each.index == "HRI" and each.limit is not None for each in rides)


def lies_on(value: Fraction | None, length: float) -> bool:
    """True for a length in metres, and for its soft conversions."""
    return value is not None and abs(float(value) - length) < 0.02 * length
