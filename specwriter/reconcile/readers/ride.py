"""Ride: roughness index, improvement, localized roughness and profile index by blanking band."""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.model import Area, Job
from specwriter.model.results import Smoothness
from specwriter.quantity import Quantity
from specwriter.reconcile.requirement import Requirement, sources, stated
from specwriter.trade.ride import FOOT, INCH
from specwriter.trade.ride.profilograph import FITS

ROUGHNESS, IMPROVEMENT, LOCALIZED = "ride.roughness", "ride.improvement", "ride.localized"
PROFILE = {
    0.0: "ride.profile_index_0_0",
    0.1: "ride.profile_index_0_1",
    0.2: "ride.profile_index_0_2",
}
"""Blanking band in inches → the variable of the profile index."""

_NEAR_BAND = 0.01
"""Inches by which a soft-converted blanking band may be off."""


def read(job: Job, area: Area) -> Iterator[Requirement]:
    """What the area and other documents ask of the ride."""
    for source in sources(area):
        ride = source.smoothness
        if ride is None:
            continue
        for key in governing(job, ride):
            variable = _variable(ride) if key == "limit" else IMPROVEMENT
            if variable:
                yield from stated(variable, ride, key, source)
        if ride.localized is not None and _is_over_25_feet(ride.localized.base):
            yield from stated(LOCALIZED, ride.localized, "limit", source)


def waits(job: Job, area: Area) -> Iterator[str]:
    """Why something stated could not be read."""
    for source in sources(area):
        ride = source.smoothness
        if ride is None:
            continue
        if ride.index == "HRI" and ride.limit:
            yield "HRI averages the wheel paths; nothing here speaks of it"
        elif ride.index == "PI" and ride.limit and ride.blanking_band and not _variable(ride):
            yield "nothing is known of a profile index with this blanking band"
        if ride.limit and ride.improvement and not governing(job, ride):
            yield "the existing MRI does not settle whether limit or improvement is less strict"
        local = ride.localized
        if local and local.limit and local.base and not _is_over_25_feet(local.base):
            yield "localized roughness is known here over a base of 25 ft only"


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
    if ride.index != "PI" or ride.blanking_band is None:
        return ""
    band = ride.blanking_band.nominal
    near = (
        fit.band
        for fit in FITS
        if band is not None and abs(float(band) / INCH - fit.band) < _NEAR_BAND
    )
    return PROFILE.get(next(near, -1.0), "")


def _is_over_25_feet(base: Quantity | None) -> bool:
    """True for 25 ft and for its soft conversions."""
    return (
        base is not None
        and base.nominal is not None
        and (abs(float(base.nominal) - 25 * FOOT) < 0.5 * FOOT)
    )
