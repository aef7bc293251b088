"""Friction limits as the numbers of a surface that just meets them, by tyre and speed.

Two limits on one surface are lower limits both, and no two of those exclude one another; what
can be compared is whether they ask for the same friction. So each is read as the number it names.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from fractions import Fraction

from specwriter.model import Area, Job
from specwriter.model.area import Statement
from specwriter.model.results import Friction
from specwriter.quantity import Interval, Quantity
from specwriter.reconcile.requirement import Requirement, sources, stated
from specwriter.trade.friction_measure import read_measure

SLOW_MPH = 40
_SLOW = SLOW_MPH * Fraction("1609.344") / 3600
_NEAR = Fraction(1, 2)
"""A speed counts as 40 mph within 0.5 m/s: 64 and 65 km/h are soft conversions of it."""


def read(job: Job, area: Area) -> Iterator[Requirement]:
    """The limits of the area, of other documents, and the profile depth that both speak of.

    A variable is read once: two lower limits on the same number do not exclude one another.
    """
    listed = sources(area)
    if sum(each.friction is not None for each in listed) < 2:
        return
    found = [each for source in listed for each in _of(source)]
    found += _profile_depth(listed)
    yield from {each.variable: each for each in reversed(found)}.values()


def speaks_of(job: Job, area: Area, *variables: str) -> bool:
    """True where all these numbers are stated: no model is fed with another's answer."""
    return set(variables) <= {each.variable for each in read(job, area)}


def waits(job: Job, area: Area) -> Iterator[str]:
    """Why a second friction limit cannot be compared."""
    stated = [each.friction for each in sources(area) if each.friction is not None]
    if len(stated) > 1 and not all(map(_is_read, stated)):
        yield "a friction limit names no skid number, tyre or speed"
    elif len(stated) > 1 and not list(_profile_depth(sources(area))):
        yield "the profile depth (MPD) of the surface under two friction limits is not given"


def _is_read(limit: Friction) -> bool:
    """True for a skid number with tyre and speed, in its name (SN40R) or beside it."""
    return limit.at_least is not None and None not in (_tyre(limit), _speed(limit))


def _tyre(limit: Friction) -> str | None:
    named = read_measure(limit.measure)
    if limit.measure and (named is None or named.kind != "skid number"):
        return None
    return limit.tyre or (named.tyre if named else None)


def _speed(limit: Friction) -> Fraction | None:
    """The speed in m/s; from the name alone only 40, which no metric name uses."""
    named = read_measure(limit.measure)
    if limit.speed is None and named is not None and named.speed == SLOW_MPH:
        return _SLOW
    return _named(limit.speed)


def _of(source: Area | Statement) -> Iterator[Requirement]:
    limit = source.friction
    if limit is None or not _is_read(limit):
        return
    slow = abs((_speed(limit) or 0) - _SLOW) <= _NEAR
    variable = f"friction.{_tyre(limit)}" + ("" if slow else "_elsewhere")
    yield from map(_as_named, stated(variable, limit, "at_least", source))
    if not slow:
        yield from map(_as_named, stated("friction.other_speed", limit, "speed", source))


def _profile_depth(listed: tuple[Area | Statement, ...]) -> Iterator[Requirement]:
    for source in listed:
        depth = source.texture_depth
        if depth is not None and depth.measure == "MPD" and depth.at_least is not None:
            yield from map(_as_named, stated("friction.profile_depth", depth, "at_least", source))
            return


def _as_named(requirement: Requirement) -> Requirement:
    """The requirement held to the one number that it names."""
    at = _named(requirement.quantity)
    point = requirement.interval if at is None else Interval(at, at)
    return replace(requirement, interval=point, reading=point)


def _named(quantity: Quantity | None) -> Fraction | None:
    """The number that a value or a one-sided limit names."""
    if quantity is None or quantity.form not in ("value", "at_least", "at_most"):
        return None
    return quantity.amounts[0].base
