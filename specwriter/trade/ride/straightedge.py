"""A straightedge against the roughness index: a screen, never a conversion.

The gap under a straightedge and the index respond to different waves. A regular wave that just
meets the tolerance shows how rough a surface the straightedge lets pass.

Source: geometry and project calculation.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache
from math import cos, inf, pi
from typing import Literal

from specwriter.trade.ride.gain import roughness_of_sine

Kind = Literal["resting", "rolling"]

SHORTEST = 3.0
"""Shortest wave of the screen, metres: below it the index answers less and less."""

LONGEST = 30.0
"""Longest wave of the screen, metres: the index answers longer ones by less than half."""

_PARTS = 800


def gap(wavelength: float, length: float, kind: Kind) -> float:
    """Largest gap under a straightedge over a regular wave, per amplitude of the wave.

    ``kind``: ``resting`` lies on the highest points and finds the deepest one between;
    ``rolling`` stands on a wheel at each end and reads at the middle, and is blind to waves
    that fit an even number of times. Lengths in one unit; the amplitude is half the height.
    """
    if kind == "resting" and wavelength <= length:
        return 2.0
    return 1 - cos(pi * length / wavelength)


def roughness_at(wavelength: float, tolerance: float, length: float, kind: Kind) -> float:
    """Roughness of the regular wave that just meets the tolerance; metres, result a slope."""
    per_amplitude = gap(wavelength, length, kind)
    if per_amplitude < 1e-9:
        return inf
    return roughness_of_sine(tolerance / per_amplitude, wavelength)


@lru_cache(maxsize=256)
def screen(length: float, kind: Kind) -> tuple[float, float]:
    """Least and greatest roughness of the waves from 3 m to 30 m that just meet a tolerance.

    Slopes per metre of tolerance: a regular wave that uses a tolerance ``t`` to its limit is
    between ``t * least`` and ``t * greatest`` rough.
    """
    ratio = LONGEST / SHORTEST
    waves = [SHORTEST * pow(ratio, part / _PARTS) for part in range(_PARTS + 1)]
    found = [roughness_at(wave, 1.0, length, kind) for wave in waves]
    return min(found), max(found)


@dataclass(frozen=True, slots=True, kw_only=True)
class OnRandomSurface:
    """Gaps under a resting 10 ft straightedge on random surfaces of one MRI, each low and high.

    Over three spectra (slope spectrum falling, level and rising by the square root of the wave
    number); gaps in inches, ``over`` is the percentage of placements with more than 1/8 in.
    """

    mri: int
    gap_95: tuple[float, float]
    gap_99: tuple[float, float]
    largest: tuple[float, float]
    over: tuple[float, float]


ON_RANDOM = (
    OnRandomSurface(
        mri=40, gap_95=(0.036, 0.043), gap_99=(0.047, 0.053), largest=(0.064, 0.083), over=(0, 0)
    ),
    OnRandomSurface(
        mri=60, gap_95=(0.054, 0.065), gap_99=(0.071, 0.079), largest=(0.095, 0.124), over=(0, 0)
    ),
    OnRandomSurface(
        mri=80,
        gap_95=(0.073, 0.086),
        gap_99=(0.094, 0.105),
        largest=(0.127, 0.166),
        over=(0.04, 0.06),
    ),
    OnRandomSurface(
        mri=100,
        gap_95=(0.091, 0.108),
        gap_99=(0.118, 0.131),
        largest=(0.159, 0.207),
        over=(0.5, 1.7),
    ),
    OnRandomSurface(
        mri=150, gap_95=(0.136, 0.162), gap_99=(0.177, 0.197), largest=(0.238, 0.311), over=(8, 22)
    ),
)
"""Source: project calculation over 3 km (the share at MRI 80 over 12 km); gaps grow in proportion
to the MRI. ``largest`` is one draw for each of the spectra, not a property of the surface."""
