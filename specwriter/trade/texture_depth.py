"""Texture depth from groove geometry, and the scales it is measured on.

Lengths in one unit, except where millimetres are named.
"""

from __future__ import annotations

from fractions import Fraction
from math import pi
from typing import Literal

Conversion = Literal["0.2 + 0.8 MPD", "1.1 MPD", "0.069 + 0.947 MPD"]

CONVERSION_SOURCES: dict[Conversion, str] = {
    "0.2 + 0.8 MPD": "ASTM E1845 and ISO 13473-1:1997, as used in public implementations "
    "(second-hand)",
    "1.1 MPD": "ISO 13473-1:2019, 7.10, as stated in the method paper of a public implementation "
    "(second-hand)",
    "0.069 + 0.947 MPD": "ASTM E2157 (circular track), whose equation is not that of E1845, "
    "coefficients from memory, unverified",
}

LINES: dict[Conversion, tuple[Fraction, Fraction]] = {
    "0.2 + 0.8 MPD": (Fraction("0.8"), Fraction("0.2")),
    "1.1 MPD": (Fraction("1.1"), Fraction(0)),
    "0.069 + 0.947 MPD": (Fraction("0.947"), Fraction("0.069")),
}
"""Conversion → slope and offset in mm of patch depth over profile depth: ``CONVERSION_SOURCES``."""


def groove_share(
    width: Fraction, width_at_bottom: Fraction, depth: Fraction, spacing: Fraction
) -> Fraction:
    """Mean depth that the grooves alone give: cross-section over spacing. Source: geometry."""
    return (width + width_at_bottom) / 2 * depth / spacing


def texture_depth(
    width: Fraction,
    width_at_bottom: Fraction,
    depth: Fraction,
    spacing: Fraction,
    land_texture: Fraction,
) -> Fraction:
    """Mean texture depth over grooves and lands: groove share and the lands' own. Geometry."""
    share = groove_share(width, width_at_bottom, depth, spacing)
    return share + (1 - width / spacing) * land_texture


def land_texture_needed(share: Fraction, kerf: Fraction, target: Fraction) -> Fraction:
    """Land texture that lifts a groove share to the target; ``kerf`` is width / spacing."""
    return (target - share) / (1 - kerf)


def conversion_of(method: str, edition: str) -> Conversion | None:
    """The conversion from MPD that the named edition holds; ``None`` where it is not known.

    The editions disagree (they cross at an MPD of 2/3 mm), so nothing is assumed.
    """
    if "E2157" in method:
        return "0.069 + 0.947 MPD"
    year = edition[:4]
    if not year.isdigit():
        return None
    if "13473-1" in method:
        return "1.1 MPD" if year >= "2019" else "0.2 + 0.8 MPD"
    return "0.2 + 0.8 MPD" if "E1845" in method and year <= "2015" else None


def etd_of_mpd(mpd_mm: Fraction, conversion: Conversion) -> Fraction:
    """Estimated texture depth in mm. Source: ``CONVERSION_SOURCES``."""
    slope, offset = LINES[conversion]
    return slope * mpd_mm + offset


def depth_of_patch(volume: float, diameter: float) -> float:
    """Mean texture depth of a volumetric patch: 4 V / (π D²), one unit. Source: geometry."""
    return 4 * volume / (pi * diameter**2)


def mpd_of_etd(etd_mm: Fraction, conversion: Conversion) -> Fraction:
    """The profile depth in mm behind an estimated texture depth: ``etd_of_mpd`` turned round."""
    slope, offset = LINES[conversion]
    return (etd_mm - offset) / slope


def edge_rounding(radius: Fraction, spacing: Fraction) -> float:
    """Depth that rounding both edges of each groove adds: 2 (1 - π/4) r² / p. Geometry."""
    return float(2 * (1 - pi / 4) * radius**2 / spacing)
