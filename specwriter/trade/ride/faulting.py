"""Total faulting, and the published model that turns it into roughness."""

from __future__ import annotations

COEFFICIENT = 1.4929
"""in/mi of roughness for in/mi of faulting, mechanistic-empirical design (memory, unverified:
NCHRP 1-37A and 1-40D give 1.4929, the 2008 manual of practice prints 0.4929). A chord through
mid-range: it overstates small steps on a normal surface and understates large ones."""


def total_faulting(step: float, spacing: float) -> float:
    """Faulting summed over a length: step over spacing, a slope. Source: definition."""
    return step / spacing


def modelled(step: float, spacing: float) -> float:
    """Roughness that the published model adds for faulting, a slope. Source: ``COEFFICIENT``."""
    return COEFFICIENT * total_faulting(step, spacing)
