"""Concrete taken away by cutting: volume, mass of solids, and what is left of slab and cover.

Depths, thicknesses and covers in any one unit of length; volume per area in that unit.
"""

from __future__ import annotations

from fractions import Fraction

from specwriter.trade.formula import Formula, identity

VOLUME = identity("volume = depth × area; 1 mm over 1 m² is 1 L")
GROOVE_VOLUME = identity("volume per area = mean groove width × groove depth / spacing")

SOLIDS = Formula(
    text="mass of solids = volume × density",
    source="arithmetic; density of concrete 145 to 150 lb/ft³ (common practice, no source)",
    validity="dry solids in place; the slurry is heavier by its water",
)

SECTION_MODULUS = Formula(
    text="share left = ((slab thickness - depth of removal) / slab thickness)²",
    source="geometry of a rectangular section",
    validity="a plain slab; strength gained with age is not counted",
)

STRESS = Formula(
    text="stress after / before = (slab thickness / (slab thickness - depth of removal))²",
    source="geometry of a rectangular section",
    validity="the same load and support; a plain slab",
)

DENSITY = (Fraction("2322.68"), Fraction("2402.77"))
"""145 and 150 lb/ft³ in kg/m³ (common practice, no source)."""


def volume(area: Fraction, depth: Fraction) -> Fraction:
    """Solid volume taken from an area: ``VOLUME``."""
    return area * depth


def mass(volume: Fraction, density: Fraction) -> Fraction:
    """Mass of the solids; ``density`` per the unit of the volume: ``SOLIDS``."""
    return volume * density


def section_modulus_left(thickness: Fraction, removed: Fraction) -> Fraction:
    """Share of the section modulus that is left: ``SECTION_MODULUS``."""
    return ((thickness - removed) / thickness) ** 2


def stress_ratio(thickness: Fraction, removed: Fraction) -> Fraction:
    """Bending stress after removal over before: the section modulus, turned round."""
    return 1 / section_modulus_left(thickness, removed)


def step_left(faulting: Fraction, removed: Fraction) -> Fraction:
    """Least step at a joint after so much is removed from its high side. Source: geometry."""
    return max(Fraction(0), faulting - removed)
