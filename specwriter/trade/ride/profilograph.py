"""The profile index beside the roughness index: a screen with its scatter.

There is no conversion: the profilograph answers waves of 25 ft most and its blanking band takes
away what is small, whatever its wavelength. What stands here are lines through simulated pairs;
measured pairs scatter more.

Source: project calculation: a profilograph of twelve wheels in two groups 25 ft apart, random
profiles of five spectra, 1980 segments of 0.1 mi with an IRI of 40 to 160 in/mi.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import cos, pi

from specwriter.trade.ride import FOOT

SIMULATED = (40, 160)
"""Roughness of the surfaces that were simulated, in/mi."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Fit:
    """``IRI = slope x PI + offset`` with its standard error, all in in/mi."""

    band: float
    """Blanking band, inches."""
    slope: float
    offset: float
    error: float
    explained: float
    """Share of the variance that the line explains."""

    def iri(self, profile_index: float) -> float:
        """IRI on the line."""
        return self.slope * profile_index + self.offset

    def range_of_iri(self, profile_index: float) -> tuple[float, float]:
        """IRI two standard errors either side of the line, not below 0."""
        middle, reach = self.iri(profile_index), 2 * self.error
        return max(0.0, middle - reach), middle + reach


FITS = (
    Fit(band=0.0, slope=2.52, offset=12.8, error=8.7, explained=0.95),
    Fit(band=0.1, slope=2.80, offset=52.4, error=14.3, explained=0.88),
    Fit(band=0.2, slope=3.04, offset=87.1, error=19.5, explained=0.65),
)
"""By blanking band. With 0.2 in a third of the segments show a PI of 0 and are outside the fit."""

MEANS: dict[int, tuple[tuple[float, float], ...]] = {
    40: ((11.4, 2.3), (0.4, 0.7), (0.00, 0.04)),
    60: ((19.4, 2.7), (3.5, 2.5), (0.25, 0.46)),
    80: ((27.1, 3.1), (8.8, 4.0), (1.6, 1.7)),
    100: ((34.8, 3.7), (15.5, 5.1), (4.5, 3.4)),
    130: ((46.0, 4.4), (26.0, 6.2), (11.4, 5.8)),
    160: ((57.1, 5.2), (37.0, 7.1), (20.1, 7.7)),
}
"""IRI → mean and standard deviation of PI for bands of 0.0, 0.1 and 0.2 in, all in in/mi."""

SEES_FROM = {0.0: 0.0, 0.1: 60.0, 0.2: 80.0}
"""Blanking band (inches) → the least IRI (in/mi) of ``MEANS`` that it tells from a smooth road:
where the mean PI is about its own standard deviation or more."""

_REACH = 12.5 * FOOT
_WHEELS = tuple(place * FOOT for place in (-2.5, -1.5, -0.5, 0.5, 1.5, 2.5))


def fit_of(band: float) -> Fit | None:
    """The line for a blanking band in inches; ``None`` for a band that was not simulated."""
    return next((fit for fit in FITS if abs(fit.band - band) < 1e-6), None)


def gain(wave_number: float) -> float:
    """Trace over wave, by amplitude, without a blanking band; cycles per metre.

    The reading wheel at the middle against the mean of twelve wheels, six around a point
    12.5 ft ahead and six behind, 1 ft apart.
    """
    around = sum(cos(2 * pi * wave_number * (_REACH + wheel)) for wheel in _WHEELS)
    return abs(1 - around / len(_WHEELS))
