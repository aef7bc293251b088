"""Noise limits at the source, at the standard speed."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from specwriter.model import Area, Job
from specwriter.model.results import Noise
from specwriter.reconcile.requirement import Requirement, sources, stated
from specwriter.trade.sound import STANDARD_SPEED_MPH

_STANDARD = Fraction(STANDARD_SPEED_MPH) * Fraction("1609.344") / 3600


def read(job: Job, area: Area) -> Iterator[Requirement]:
    """The limits of the area, and of other documents."""
    for source in sources(area):
        if (
            source.noise is not None
            and source.noise.measure == "OBSI"
            and _is_standard(source.noise)
        ):
            yield from stated("noise.level", source.noise, "at_most", source)


def waits(job: Job, area: Area) -> Iterator[str]:
    """Why a limit that the job states cannot be read."""
    for source in sources(area):
        noise = source.noise
        if noise is None or noise.at_most is None or noise.measure != "OBSI":
            continue
        if not _is_standard(noise):
            yield "the noise limit is for another speed than 60 mph (97 km/h)"


def _is_standard(noise: Noise) -> bool:
    """True at the speed that the method takes where none is stated, written in either unit."""
    return noise.speed is None or _STANDARD in noise.speed.interval.widen(Fraction(1, 3))
