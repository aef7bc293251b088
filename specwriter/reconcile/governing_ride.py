"""Which part of a surface decides what a straightedge or a short base finds.

A gap or a short rough place has one cause at a time: the worst of those that the job allows. Only
the relation of that cause is judged.
"""

from __future__ import annotations

from fractions import Fraction
from typing import Literal

from specwriter.model import Area, Job
from specwriter.model.results import Straightedge
from specwriter.reconcile.per_area import per_area
from specwriter.reconcile.readers import ride
from specwriter.reconcile.requirement import sources
from specwriter.reconcile.roughness_of_parts import has_joints, has_steps
from specwriter.reconcile.stated_ride import leaves_steps, lies_on, most
from specwriter.trade.ride import FOOT, INCH, INCH_PER_MILE, steps
from specwriter.trade.ride.bumps import LEAST_LOCALIZED, MOST_LOCALIZED
from specwriter.trade.ride.lengths import worst_over_segment
from specwriter.trade.ride.straightedge import ON_RANDOM

Cause = Literal["segment", "step", "bump", ""]

_WITHOUT_JOINTS = ("continuously_reinforced_concrete", "asphalt", "airfield_asphalt")

SURFACE = next(row for row in ON_RANDOM if row.mri == 100)
"""The random surface from which gaps under a straightedge are taken, in proportion."""

GAP_PER_ROUGHNESS = Fraction(
    SURFACE.gap_99[0] * INCH / (SURFACE.mri * INCH_PER_MILE)
).limit_denominator(10**6)
"""Gap that one placement in a hundred exceeds, metres for a slope of 1."""


@per_area
def localized_governed_by(job: Job, area: Area) -> Cause:
    """What makes the worst short place that the rest allows; empty where nothing is known.

    A segment whose own limit is above the localized limit is left to another check.
    """
    short, base = most(job, area, ride.LOCALIZED), most(job, area, ride.BASE)
    if short is None or base is None:
        return ""
    worst: dict[Cause, float] = {}
    segment = most(job, area, ride.ROUGHNESS)
    if segment is not None and segment <= short:
        worst["segment"] = float(segment) * worst_over_segment(float(base))
    if has_joints(job, area) and has_steps(job, area):
        step = _step(job, area) * steps.localized(round(float(base), 2))
        worst["step"] = steps.combined(steps.SMOOTHEST, step)
    bump, allowed = most(job, area, ride.BUMP), greatest_step(area)
    if bump is not None and _is_loose(bump, short, base) and (allowed or 0) <= bump:
        worst["bump"] = float(bump) * LEAST_LOCALIZED
    return max(worst, key=lambda cause: worst[cause], default="")


@per_area
def bump_governed_by(job: Job, area: Area) -> Literal["step", "localized", ""]:
    """What makes the highest bump that the rest allows; empty where the bump is a cause itself."""
    bump, short = most(job, area, ride.BUMP), most(job, area, ride.LOCALIZED)
    base = most(job, area, ride.BASE)
    if bump is None or localized_governed_by(job, area) == "bump":
        return ""
    if greatest_step(area) is not None:
        return "step"
    same = short is not None and lies_on(base, 25 * FOOT)
    return "localized" if same and not _is_loose(bump, short, base) else ""


def _is_loose(bump: Fraction, short: Fraction | None, base: Fraction | None) -> bool:
    """True where some bump of this height is as rough over 25 ft as the localized limit."""
    return short is not None and lies_on(base, 25 * FOOT) and float(bump) * MOST_LOCALIZED >= short


def _step(job: Job, area: Area) -> float:
    """The greatest step that is allowed at a joint, else the least that a cap leaves."""
    allowed = greatest_step(area)
    if allowed is not None:
        return float(allowed)
    faulting = job.conditions.existing_faulting
    caps = [each.removal.depth for each in sources(area) if each.removal is not None]
    deepest = [each.interval.high for each in caps if each is not None]
    if faulting is None or faulting.interval.low is None or not deepest or None in deepest:
        return 0.0
    return max(0.0, float(faulting.interval.low) - min(float(each or 0) for each in deepest))


def greatest_step(area: Area) -> Fraction | None:
    """The greatest step at a joint that every statement allows."""
    limits = [each.joint_match for each in sources(area) if each.joint_match is not None]
    highs = [each.interval.high for each in limits if each.interval.high is not None]
    return min(highs, default=None)


def straightedge_finds_steps(job: Job, area: Area) -> bool:
    """True where every straightedge that is stated is laid across joints too, and finds steps
    that a limit on them, or on removal, leaves there."""
    edges = [each.straightedge for each in sources(area) if each.straightedge is not None]
    if not edges or job.conditions.pavement in _WITHOUT_JOINTS:
        return False
    gaps = [each.tolerance.interval.high for each in edges if each.tolerance is not None]
    step = greatest_step(area)
    if step is None:
        finds = leaves_steps(job, area)
    else:
        finds = any(gap is not None and gap < step for gap in gaps)
    return finds and all(map(_crosses_joints, edges))


def step_governs_straightedge(job: Job, area: Area) -> bool:
    """True where the greatest step that is allowed at a joint opens a wider gap under the
    straightedge than a surface at the limit of the roughness index."""
    step = greatest_step(area)
    limit = most(job, area, ride.ROUGHNESS) or 0
    finds = straightedge_finds_steps(job, area)
    return finds and step is not None and step >= limit * GAP_PER_ROUGHNESS


def _crosses_joints(edge: Straightedge) -> bool:
    """True for an edge said to lie along the lane, unless its test speaks of joints or it rolls:
    that one stands on both slabs and reads half a step."""
    where = edge.test.where if edge.test is not None else None
    along = edge.direction in ("longitudinal", "both") and edge.kind != "rolling"
    return along and "joint" not in (where or "").lower()
