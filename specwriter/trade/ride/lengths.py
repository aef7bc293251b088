"""How the length over which roughness is averaged changes what is found.

Source: project calculation on random profiles; the growth below 0.1 mi agrees with a paper
abstract in Transportation Research Record 2641 (use the index on lengths above 528 ft).
"""

from __future__ import annotations

from math import sqrt

from specwriter.trade.ride import FOOT

WORST_OVER_SEGMENT = 1.65
"""Median of the worst 25 ft in a 0.1-mi segment over the segment's own index."""

WORST_ERROR = 0.1
"""How far that ratio moves with the spectrum of the surface."""

_AT_BASE = 0.23
_BASE = 25 * FOOT


def variation(length: float) -> float:
    """Coefficient of variation of the index over stretches of ``length`` metres."""
    return _AT_BASE * sqrt(_BASE / length)
