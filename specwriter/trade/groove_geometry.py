"""Groove geometry: what width, land, spacing and blade set make of one another.

Any one unit of length throughout. The identities follow from geometry: along the line that
crosses the grooves, one groove and one land make one spacing.
"""

from __future__ import annotations

from fractions import Fraction
from math import atan, degrees


def spacing(width: Fraction, land: Fraction) -> Fraction:
    """Centre-to-centre spacing of grooves. Source: geometry."""
    return width + land


def grooves_per(length: Fraction, spacing: Fraction) -> Fraction:
    """Grooves in a length, both in one unit: ``grooves_per(12, 3/4)`` per foot. Geometry."""
    return length / spacing


def pitch_of_blades(core: Fraction, spacer: Fraction) -> Fraction:
    """Spacing that a stack of blades cuts: cores and spacers lie flat on the arbor. Geometry."""
    return core + spacer


def land_of_blades(segment: Fraction, core: Fraction, spacer: Fraction) -> Fraction:
    """Land that a stack of blades leaves: the rim overhangs the core on both sides. Geometry."""
    return spacer - (segment - core)


def edge_angle(width: Fraction, width_at_bottom: Fraction, depth: Fraction) -> float:
    """Angle at the top edge of a trapezoidal groove, through the solid, in degrees. Geometry."""
    return 90 + degrees(atan((width - width_at_bottom) / 2 / depth))


def land(spacing: Fraction, width: Fraction) -> Fraction:
    """Land between two grooves of a pattern. Geometry."""
    return spacing - width


def kerf_share(width: Fraction, spacing: Fraction) -> Fraction:
    """Share of the surface that the grooves take away. Geometry."""
    return width / spacing
