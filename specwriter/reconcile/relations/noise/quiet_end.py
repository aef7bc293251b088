"""The quietest level that a texture is known to reach, at the speed of the test."""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction
from typing import Any

from specwriter.model import Area, Job
from specwriter.quantity import Interval
from specwriter.reconcile.readers import noise
from specwriter.reconcile.relation import Function, Linear, Relation, Shape
from specwriter.reconcile.relations.noise import WHY
from specwriter.trade import sound

_MPH = 0.44704


def _applies(texture: str, off_speed: bool) -> Callable[[Job, Area], bool]:
    def applies(job: Job, area: Area) -> bool:
        return (
            area.texture == texture
            and noise.is_off_standard_speed(area) is off_speed
            and noise.is_at_known_speed(area)
        )

    return applies


def _aside(job: Job, area: Area) -> str:
    if area.noise is None or area.noise.at_most is None or noise.is_at_known_speed(area):
        return ""
    slow, fast = sound.SPEEDS_MPH
    return f"levels of a texture are carried here to speeds from {slow} to {fast} mph only"


def _shape(variable: str, least: float, off_speed: bool) -> Shape:
    """``least`` at 60 mph; at another speed the quiet end of what the speed may change."""
    if not off_speed:
        return Linear({variable: 1}, Interval(Fraction(str(least)), None))

    def level(at: Any) -> Fraction:
        return Fraction(sound.at_speed(least, float(at[noise.SPEED]) / _MPH, -1))

    return Function(
        output=variable,
        inputs=(noise.SPEED,),
        value=level,
        signs=lambda at: {noise.SPEED: 1},
        bound="at_least",
    )


def _relation(variable: str, texture: str, *, off_speed: bool) -> Relation:
    band = sound.BANDS[texture]
    added, place, source = _PLACES[variable]
    least = band.quietest + added
    sources = [band.source, *([source] if source else [])]
    validity = [f"levels at 60 mph (97 km/h){', carried to the speed of the test' * off_speed}"]
    if off_speed:
        sources.append(f"level over speed: {sound.SPEED_SLOPE.source}")
        validity.append(f"speed: {sound.SPEED_SLOPE.validity}")
    return Relation(
        slug="noise-below-the-quiet-end",
        title="the texture is not known to be so quiet",
        statement=(
            f"{texture.replace('_', ' ')} gives about {least:.0f} dB(A) {place} at 60 mph at the "
            "quietest, from memory, unverified"
        ),
        shape=_shape(variable, least, off_speed),
        why=WHY,
        source="; ".join(sources),
        validity="; ".join(validity),
        family=_of_all(place, added),
        kind="experience",
        about=(variable,),
        applies=_applies(texture, off_speed),
        aside=_aside,
        ways=(
            f"a limit of {least:.0f} dB(A) or more at 60 mph",
            "measure a lane of this texture near by before the limit is set",
        ),
    )


def _of_all(place: str, added: float) -> str:
    """The quiet ends of all textures at one place."""
    levels = (
        f"{texture.replace('_', ' ')} {band.quietest + added:.0f}"
        for texture, band in sound.BANDS.items()
    )
    return (
        f"at the quietest, in dB(A) {place} at 60 mph, from memory, unverified: {', '.join(levels)}"
    )


_PLACES: dict[str, tuple[float, str, str]] = {
    noise.SOURCE: (0.0, "beside the tyre", ""),
    noise.AGED: (
        sound.AGEING_DB,
        f"beside the tyre after {sound.AGED_YEARS} years",
        sound.AGEING.source,
    ),
    noise.ROADSIDE[25]: (
        -sound.quietest_offset(25),
        "at 25 ft from the lane",
        sound.ROADSIDE.source,
    ),
    noise.ROADSIDE[50]: (
        -sound.quietest_offset(50),
        "at 50 ft from the lane",
        sound.ROADSIDE.source,
    ),
}
"""Variable → what is added to the quiet end of a texture, where it is heard, and the source."""

RELATIONS = [
    _relation(variable, texture, off_speed=off_speed)
    for variable in _PLACES
    for texture in sound.BANDS
    for off_speed in (False, True)
]
