"""Roughness of slabs that curl between their joints.

Source: project calculation with the quarter-car of ASTM E1926: parabolic slabs, joints high or
low by ``h`` against mid-slab. The change of curl over a day cannot be ground away.
"""

from __future__ import annotations

from functools import lru_cache
from math import floor

from specwriter.trade.ride.periodic import roughness_of_period
from specwriter.trade.ride.roughness import AVERAGING


@lru_cache(maxsize=1024)
def curl(spacing: float) -> float:
    """Roughness per metre of curl, joint to mid-slab; ``spacing`` of the joints in metres."""

    def below(position: float) -> float:
        """Integral of the parabola ``(2 x / spacing - 1)^2``, repeated slab by slab."""
        slabs = floor(position / spacing)
        within = position / spacing - slabs - 0.5
        return spacing * (slabs / 3 + 4 / 3 * within**3)

    half = AVERAGING / 2
    return roughness_of_period(lambda x: (below(x + half) - below(x - half)) / AVERAGING, spacing)
