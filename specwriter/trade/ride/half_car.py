"""The half-car index (HRI) beside the mean of the wheel paths (MRI)."""

from __future__ import annotations

from math import sqrt

from specwriter.trade.formula import Formula

UNLIKE_PATHS = 1 / sqrt(2)
"""HRI over MRI where the two wheel paths have nothing in common."""

AT_MOST = Formula(
    text="HRI <= MRI",
    source="the quarter-car is linear: the motion over the mean of two profiles is the mean of "
    "both motions, and the size of a mean is at most the mean of the sizes",
    validity="the profiles of both wheel paths, taken in one run",
)

OF_UNLIKE_PATHS = Formula(
    text="HRI = MRI / √2",
    source="project calculation: two random profiles of equal roughness without correlation "
    "(0.711 in simulation)",
    validity="the least that is to be expected: what both wheel paths share (joints, swells) "
    "counts fully in both indexes; measured pairs lie between 0.7 and 1",
)


def least_half_car(mean: float) -> float:
    """HRI over wheel paths that have nothing in common, in the unit of ``mean``."""
    return mean * UNLIKE_PATHS
