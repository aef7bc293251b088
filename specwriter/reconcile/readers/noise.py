"""Noise limits beside the tyre, new and after years, and at the roadside by its distance.

Limits are compared at one speed: that of the first limit which names one, else 60 mph.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from specwriter.model import Area, Job
from specwriter.model.results import Noise
from specwriter.reconcile.requirement import Requirement, sources, stated
from specwriter.trade.sound import (
    AGED_YEARS,
    BETWEEN_SCALES,
    STANDARD_SPEED_MPH,
    is_known_speed,
    microphone_distance,
)

SOURCE, AGED, SPEED = "noise.source", "noise.source_aged", "noise.test_speed"
ROADSIDE = {25: "noise.roadside_25", 50: "noise.roadside_50"}
"""Distance of the microphone in feet → the variable of a roadside limit."""

_MPH = 0.44704
_NEAR = 1.0
"""Speed in mph by which a soft-converted one may be off."""

_YEARS = re.compile(r"\b(\d{1,2})[ -]?years?\b", re.IGNORECASE)


def read(job: Job, area: Area) -> Iterator[Requirement]:
    """The limits of the area and of other documents, and the speed where it is not 60 mph."""
    speed = _speed_of(area)
    for source in sources(area):
        noise = source.noise
        if noise is None or not _is_at(noise, speed):
            continue
        if variable := _variable(noise):
            yield from stated(variable, noise, "at_most", source)
            if abs(speed - STANDARD_SPEED_MPH) > _NEAR:
                yield from stated(SPEED, noise, "speed", source)


def waits(job: Job, area: Area) -> Iterator[str]:
    """Why a noise limit cannot be compared."""
    speed = _speed_of(area)
    for source in sources(area):
        noise = source.noise
        if noise is None or noise.at_most is None or noise.measure is None:
            continue
        if not _variable(noise):
            yield "a noise limit names no distance that is known here, or is on another scale"
        elif not _is_at(noise, speed):
            yield "the noise limits are for two speeds"


def is_off_standard_speed(area: Area) -> bool:
    """True where the limits are for another speed than 60 mph."""
    return abs(_speed_of(area) - STANDARD_SPEED_MPH) > _NEAR


def is_at_known_speed(area: Area) -> bool:
    """True where the speed is one to which levels are carried."""
    return is_known_speed(_speed_of(area))


def _variable(noise: Noise) -> str:
    """The variable of a limit on its own scale; empty where nothing here speaks of it."""
    if noise.at_most is None or noise.measure is None:
        return ""
    beside_tyre = noise.at_most.amounts[0].base >= BETWEEN_SCALES
    if beside_tyre is not (noise.measure == "OBSI"):
        return ""
    if noise.measure == "OBSI":
        return AGED if _is_aged(noise) else SOURCE
    where = f"{noise.test.where or ''} {noise.test.method or ''}" if noise.test else ""
    distance = microphone_distance(where)
    return ROADSIDE[distance] if distance else ""


def _is_aged(noise: Noise) -> bool:
    """True for a limit that is to hold after so many years that a surface is louder by then."""
    return any(int(years) >= AGED_YEARS for years in _YEARS.findall(noise.age or ""))


def _speed_of(area: Area) -> float:
    """The speed in mph at which the limits of an area are compared."""
    listed = (each.noise for each in sources(area) if each.noise is not None)
    return next((_mph(each) for each in listed if each.speed is not None), STANDARD_SPEED_MPH)


def _is_at(noise: Noise, speed: float) -> bool:
    return abs(_mph(noise) - speed) <= _NEAR


def _mph(noise: Noise) -> float:
    return STANDARD_SPEED_MPH if noise.speed is None else float(noise.speed.amounts[0].base) / _MPH
