"""Ride: the indexes and their improvement, localized roughness over its base, and bumps."""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.model import Area, Job
from specwriter.model.area import Statement
from specwriter.model.results import LocalizedRoughness, Smoothness
from specwriter.quantity import Quantity
from specwriter.reconcile.requirement import Requirement, sources, stated
from specwriter.trade.ride import FOOT, INCH
from specwriter.trade.ride.lengths import BASES
from specwriter.trade.ride.profilograph import FITS

ROUGHNESS, HALF_CAR, IMPROVEMENT = "ride.roughness", "ride.half_car", "ride.improvement"
LOCALIZED, BASE, BUMP = "ride.localized", "ride.localized_base", "ride.bump"
PROFILE = {
    0.0: "ride.profile_index_0_0",
    0.1: "ride.profile_index_0_1",
    0.2: "ride.profile_index_0_2",
}
"""Blanking band in inches → the variable of the profile index."""

_NEAR_BAND = 0.01
"""Inches by which a soft-converted blanking band may be off."""

_NEAR_BASE = 0.5 * FOOT
"""Length by which a soft-converted base may be off."""

_TEMPLATE = 25 * FOOT
"""Base of a bump template, and of one that names none. Source: as ``bumps.TEMPLATE``."""


def read(job: Job, area: Area) -> Iterator[Requirement]:
    """What the area and other documents ask of the ride."""
    base = _base(area)
    for source in sources(area):
        ride = source.smoothness
        if ride is None:
            continue
        for key in governing(job, ride):
            variable = _variable(ride) if key == "limit" else IMPROVEMENT
            if variable:
                yield from stated(variable, ride, key, source)
        if ride.localized is not None:
            yield from _localized(ride.localized, source, base)


def _localized(
    local: LocalizedRoughness, source: Area | Statement, base: float | None
) -> Iterator[Requirement]:
    """Roughness over the base of the area, or a bump over the template."""
    if _is_bump(local):
        if local.base is None or _is_near(local.base, _TEMPLATE):
            yield from stated(BUMP, local, "limit", source)
    elif base is not None and _is_near(local.base, base):
        yield from stated(LOCALIZED, local, "limit", source)
        yield from stated(BASE, local, "base", source)


def waits(job: Job, area: Area) -> Iterator[str]:
    """Why something stated could not be read."""
    for source in sources(area):
        ride = source.smoothness
        if ride is None:
            continue
        if ride.index == "PI" and ride.limit and ride.blanking_band and not _variable(ride):
            yield "nothing is known of a profile index with this blanking band"
        if ride.limit and ride.improvement and not governing(job, ride):
            yield "the existing MRI does not settle whether limit or improvement is less strict"
        if ride.localized is not None:
            yield from _why_not_localized(ride.localized, _base(area))


def _why_not_localized(local: LocalizedRoughness, base: float | None) -> Iterator[str]:
    if local.limit is None or local.base is None:
        return
    if _is_bump(local):
        if not _is_near(local.base, _TEMPLATE):
            yield "a bump is known here over a template of 25 ft only"
    elif base is None:
        yield "localized roughness is known here over a base of 10 ft to 100 ft only"
    elif not _is_near(local.base, base):
        yield "localized roughness is limited over two bases, and judged over the first"


def governing(job: Job, ride: Smoothness) -> tuple[str, ...]:
    """The keys that must hold, ``limit`` and ``improvement``.

    Of two of which the less strict counts only that one is asked for, where the existing MRI
    settles which it is.
    """
    given = tuple(key for key in ("limit", "improvement") if getattr(ride, key) is not None)
    if len(given) < 2 or ride.whichever != "less_strict":
        return given
    existing = job.conditions.existing_mri
    limit, share = ride.limit, ride.improvement
    assert limit is not None
    assert share is not None
    if existing is None or limit.interval.high is None or share.interval.low is None:
        return ()
    low, high = existing.interval.low, existing.interval.high
    left = 1 - share.interval.low
    if high is not None and limit.interval.high >= high * left:
        return ("limit",)
    return ("improvement",) if low is not None and limit.interval.high <= low * left else ()


def _variable(ride: Smoothness) -> str:
    """The variable of the limit; empty where nothing here speaks of the index."""
    if ride.index in ("MRI", "IRI"):
        return ROUGHNESS
    if ride.index == "HRI":
        return HALF_CAR
    if ride.index != "PI" or ride.blanking_band is None:
        return ""
    band = ride.blanking_band.nominal
    near = (
        fit.band
        for fit in FITS
        if band is not None and abs(float(band) / INCH - fit.band) < _NEAR_BAND
    )
    return PROFILE.get(next(near, -1.0), "")


def _base(area: Area) -> float | None:
    """The first base, in metres, over which localized roughness is limited and known here."""
    rides = [each.smoothness for each in sources(area) if each.smoothness is not None]
    locals_ = [each.localized for each in rides if each.localized is not None]
    bases = (
        float(each.base.nominal)
        for each in locals_
        if each.base is not None and each.base.nominal is not None and not _is_bump(each)
    )
    short, long = BASES
    return next((each for each in bases if short * 0.999 < each < long * 1.001), None)


def _is_bump(local: LocalizedRoughness) -> bool:
    """True where the limit is a height and not a roughness."""
    return local.limit is not None and local.limit.dimension == "length"


def _is_near(base: Quantity | None, length: float) -> bool:
    """True for a base of the length, and for its soft conversions."""
    nominal = None if base is None else base.nominal
    return nominal is not None and abs(float(nominal) - length) < _NEAR_BASE
