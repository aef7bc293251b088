"""The parts of the roughness after texturing that the job lets one compute.

Steps at joints, curl and the long waves that the machine leaves; each part where its inputs are
stated and lie where the calculation holds.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from fractions import Fraction
from functools import reduce
from typing import Any

from specwriter.model import Area, Job
from specwriter.quantity import Interval, Quantity
from specwriter.reconcile.cutting import is_ground, removal_is_stated
from specwriter.reconcile.requirement import sources
from specwriter.reconcile.shape import Inverse, Values
from specwriter.reconcile.stated_ride import has_step_limit, leaves_steps, lies_within
from specwriter.trade.ride.curl import curl
from specwriter.trade.ride.grinder import WAVES, WHEELBASES
from specwriter.trade.ride.steps import JOINTS, combined, room_for, saw_tooth

STEP, CURL = "joint_match", "conditions.daily_curl"
SPACING, LONG_WAVES = "conditions.joint_spacing", "ride.long_waves"
EXISTING, WAVELENGTH = "conditions.existing_mri", "conditions.existing_wavelength"
WHEELBASE = "equipment.wheelbase"

ROUNDING = Fraction(1, 10**10)
"""Share granted between a computed output and the input computed back from it in floats."""

MACHINE = (
    "project calculation: a machine that always cuts, its head 3 ft ahead of the rear wheels and "
    "front wheels spread over 4 ft, where a real machine leaves more"
)
WAVES_OF_THE_MACHINE = (
    "waves from 8 ft to 200 ft that make most of the existing roughness; wheelbase from 8 ft to "
    "40 ft"
)
"""Source and validity of what a machine leaves of waves."""

_JOINTED = ("jointed_plain_concrete", "jointed_reinforced_concrete")


def has_joints(job: Job, area: Area) -> bool:
    """True for slabs whose joints are 10 ft to 40 ft apart: there roughness falls with spacing."""
    site = job.conditions
    return site.pavement in _JOINTED and lies_within(site.joint_spacing, *JOINTS)


def has_steps(job: Job, area: Area) -> bool:
    """True where the steps left at joints are limited, or a cap leaves some."""
    return has_joints(job, area) and (has_step_limit(area) or leaves_steps(job, area))


def has_curl(job: Job, area: Area) -> bool:
    """True where the daily curl of slabs is stated."""
    return has_joints(job, area) and job.conditions.daily_curl is not None


def joints_outside(job: Job, area: Area) -> str:
    """Why steps and curl are not looked at, where the job states them and the joints; or empty."""
    site = job.conditions
    stated = has_step_limit(area) or removal_is_stated(area) or site.daily_curl is not None
    if site.pavement not in _JOINTED or site.joint_spacing is None or not stated:
        return ""
    return "" if has_joints(job, area) else "joints are known here 10 ft to 40 ft apart only"


def has_waves(job: Job, area: Area) -> bool:
    """True where existing roughness, its waves and the machine's wheelbase are stated."""
    return job.conditions.existing_mri is not None and leaves_waves(job, area)


def leaves_waves(job: Job, area: Area) -> bool:
    """True where the waves of the existing roughness and the machine's wheelbase are stated."""
    return _waves_are_stated(job, area) and not waves_outside(job, area)


def waves_outside(job: Job, area: Area) -> str:
    """Why the waves that the machine leaves are not looked at, where all is stated; or empty."""
    if not _waves_are_stated(job, area):
        return ""
    if not lies_within(job.conditions.existing_wavelength, *WAVES):
        return "waves left by a wheelbase are known here from 8 ft to 200 ft of length only"
    ends = (end for each in _wheelbases(area) for end in each.interval)
    if all(end is None or WHEELBASES[0] <= end <= WHEELBASES[1] for end in ends):
        return ""
    return "waves left by a wheelbase are known here for 8 ft to 40 ft of wheelbase only"


def _waves_are_stated(job: Job, area: Area) -> bool:
    return (
        is_ground(area)
        and job.conditions.existing_wavelength is not None
        and bool(_wheelbases(area))
    )


def _wheelbases(area: Area) -> list[Quantity]:
    stated = [each.equipment for each in sources(area) if each.equipment is not None]
    return [each.wheelbase for each in stated if each.wheelbase is not None]


def crossing(rising: Callable[[float], float], low: float, high: float) -> float | None:
    """Where a rising function passes zero; ``None`` where it does not between the two ends."""
    if rising(low) > 0 or rising(high) < 0:
        return None
    for _ in range(40):
        middle = (low + high) / 2
        low, high = (low, middle) if rising(middle) > 0 else (middle, high)
    return (low + high) / 2


def value(names: Sequence[str], floor: float = 0.0) -> Callable[[Values], float]:
    """Roughness of the named parts together, over a surface that is ``floor`` rough itself."""
    return lambda at: reduce(combined, (_part(name, at) for name in names), floor)


def inverse(names: Sequence[str], name: str, floor: float = 0.0) -> Inverse:
    """The step, curl or roughness that fills up what the other parts leave."""

    def found(roughness: Any, at: Values) -> float:
        others = value([other for other in names if other != name], floor)(at)
        return room_for(float(roughness), others) / _per_unit(name, at)

    return found


def signs(at: Mapping[str, Interval]) -> dict[str, int]:
    """Every part adds; joints farther apart make less."""
    return {name: -1 if name == SPACING else 1 for name in at}


def _part(name: str, at: Values) -> float:
    return float(at[name]) * _per_unit(name, at)


def _per_unit(name: str, at: Values) -> float:
    """Roughness of a step or a curl of one metre; the spacing as coarse as it needs to be, so
    that few values are ever simulated."""
    if name == LONG_WAVES:
        return 1.0
    spacing = round(float(at[SPACING]), 2)
    return saw_tooth(spacing) if name == STEP else curl(spacing)
