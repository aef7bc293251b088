"""How the length over which roughness is averaged changes what is found.

Source: project calculation on random profiles; the growth below 0.1 mi agrees with a paper
abstract in Transportation Research Record 2641 (use the index on lengths above 528 ft).
"""

from __future__ import annotations

from itertools import pairwise
from math import log, sqrt

from specwriter.trade.ride import FOOT

WORST_OVER_SEGMENT = {10: 2.10, 15: 1.85, 25: 1.65, 50: 1.40, 100: 1.20}
"""Short base in feet → median of the worst place in a segment of 0.1 mi, over its index."""

WORST_ERROR = 0.1
"""How far that ratio moves with the spectrum of the surface."""

BASES = (min(WORST_OVER_SEGMENT) * FOOT, max(WORST_OVER_SEGMENT) * FOOT)
"""Shortest and longest base for which the ratio is known, metres."""

_AT_BASE = 0.23
_BASE = 25 * FOOT


def worst_over_segment(base: float) -> float:
    """The ratio for a base in metres, along straight lines over the logarithm of the base.

    Raises ``ValueError`` for a base outside ``BASES``.
    """
    for (short, larger), (long, smaller) in pairwise(WORST_OVER_SEGMENT.items()):
        # One part in 10^9 is the rounding of a length in floats.
        if short * FOOT * (1 - 1e-9) <= base <= long * FOOT * (1 + 1e-9):
            share = log(base / (short * FOOT)) / log(long / short)
            return larger + share * (smaller - larger)
    raise ValueError(f"the worst place of a segment is not known over a base of {base} m")


def variation(length: float) -> float:
    """Coefficient of variation of the index over stretches of ``length`` metres."""
    return _AT_BASE * sqrt(_BASE / length)
