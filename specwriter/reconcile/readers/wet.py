"""Site and texture as the relation of water and speed takes them: each at its worst.

A texture limit is a lower limit: the surface that is looked at is the one that just meets it. All
of it stands under names of its own, so that the posted speed asks nothing of the texture.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from fractions import Fraction

from specwriter.model import Area, Job
from specwriter.model.labels import and_list
from specwriter.quantity import Interval
from specwriter.reconcile.requirement import Requirement, stated
from specwriter.trade.film import outside_1979

_ALONG = ("longitudinal_grooving", "next_generation_concrete_surface")
_SITE = {
    "wet.path": "drainage_path",
    "wet.rain": "rainfall",
    "wet.cross_slope": "cross_slope",
    "wet.grade": "grade",
}
_WORST_IS_HIGH = ("wet.path", "wet.rain")


def read(job: Job, area: Area) -> Iterator[Requirement]:
    """Everything that the relation needs, or nothing: half of it would say nothing."""
    found = _found(job, area)
    if found and not _outside(found):
        for each in stated("wet.onset_speed", job.conditions, "posted_speed", bare="at_least"):
            low = each.interval.low if each.interval.low is not None else each.interval.high
            yield replace(each, interval=Interval(low, None), reading=Interval(low, None))
        yield from found


def waits(job: Job, area: Area) -> Iterator[str]:
    """Why the posted speed is not held against the film of water."""
    if lacking := _lacking(job, area):
        yield f"{and_list(lacking)} {'is' if len(lacking) == 1 else 'are'} not given"
    if outside := _outside(_found(job, area)):
        yield f"the film of water is outside its formula: {', '.join(outside)}"


def _found(job: Job, area: Area) -> list[Requirement]:
    site = job.conditions
    texture = list(_texture(area))
    needed = (site.posted_speed, site.rainfall, site.drainage_path, site.cross_slope)
    if None in needed or not texture or area.place in ("runway", "taxiway"):
        return []
    read = [each for name, key in _SITE.items() for each in stated(name, site, key)]
    return [_at_worst(each) for each in (*texture, *read)]


def _lacking(job: Job, area: Area) -> list[str]:
    """What is missing beside a posted speed and rain, which together ask for the film."""
    site = job.conditions
    if None in (site.posted_speed, site.rainfall) or area.place in ("runway", "taxiway"):
        return []
    stated = {
        "path of the water": site.drainage_path is not None,
        "cross slope": site.cross_slope is not None,
        "texture that holds water": any(_texture(area)),
    }
    return [name for name, is_stated in stated.items() if not is_stated]


def _texture(area: Area) -> Iterator[Requirement]:
    depth = area.texture_depth
    if depth is None:
        return
    if area.texture in _ALONG:
        yield from stated("wet.texture", depth, "land_texture")
    elif depth.measure in ("MTD", "ETD") and depth.surface != "between_grooves":
        yield from stated("wet.texture", depth, "at_least")


def _at_worst(requirement: Requirement) -> Requirement:
    low, high = requirement.interval.low, requirement.interval.high
    first, second = (high, low) if requirement.variable in _WORST_IS_HIGH else (low, high)
    worst = first if first is not None else second
    return replace(requirement, interval=Interval(worst, worst), reading=Interval(worst, worst))


def _outside(found: list[Requirement]) -> list[str]:
    """Inputs beyond the ranges that the relation was fitted to."""
    if not found:
        return []
    at = {each.variable: each.interval.low or Fraction(0) for each in found}
    return sorted(
        outside_1979(
            float(at["wet.texture"]) * 1000,
            float(at["wet.path"]),
            float(at["wet.rain"]) * 3.6e6,
            float(at["wet.cross_slope"]),
        )
    )
