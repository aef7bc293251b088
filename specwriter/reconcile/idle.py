"""Limits that can never bind, because others keep the variable inside them."""

from __future__ import annotations

from collections.abc import Sequence

from specwriter.quantity import Interval
from specwriter.reconcile.box import box_of, rough
from specwriter.reconcile.propagate import propagate
from specwriter.reconcile.relation import ANY, Relation
from specwriter.reconcile.requirement import Requirement
from specwriter.reconcile.verdict import Idle


def allowed_by(
    others: Sequence[Requirement], variable: str, relations: Sequence[Relation]
) -> Interval:
    """What the other requirements leave a variable, before its own is looked at (in floating
    point, widened by its rounding)."""
    box = box_of(others)
    if box is None:
        return ANY
    return (propagate(rough(box), relations) or {}).get(variable, ANY)


def idle_limit(
    requirement: Requirement,
    requirements: Sequence[Requirement],
    relations: Sequence[Relation],
    allowed: Interval,
) -> Idle | None:
    """The limit as idle, with the fewest others that make it so; ``None`` when it can bind."""
    own = requirement.interval
    if requirement.role == "condition" or own.is_point or not _strictly_inside(allowed, own):
        return None
    because = [each for each in requirements if each is not requirement]
    for each in list(because):
        fewer = [one for one in because if one is not each]
        if _strictly_inside(allowed_by(fewer, requirement.variable, relations), own):
            because = fewer
    return Idle(requirement=requirement, allowed=allowed, because=tuple(because))


def _strictly_inside(allowed: Interval, own: Interval) -> bool:
    """True when every allowed value obeys the limit and none reaches it."""
    if not own.low and own.high is None:
        return False
    low_ok = not own.low or (allowed.low is not None and allowed.low > own.low)
    high_ok = own.high is None or (allowed.high is not None and allowed.high < own.high)
    return low_ok and high_ok
