"""Depth of rain water on a sloping pavement: steady rain, plane surface, no ruts, wind or splash.

All give an indication, never a proof that a surface is safe. Depths and textures in mm, lengths
in m, rain in mm/h, slopes as a ratio; the inch form says so in its name.
"""

from __future__ import annotations

from math import hypot, sqrt

from specwriter.trade.formula import Formula, identity

PATH = identity("path = width × √(1 + (grade / cross slope)²), slope = √(cross slope² + grade²)")

FILM_1979 = Formula(
    text="film = 0.01485 T^0.11 L^0.43 I^0.59 / S^0.42 - T, with texture T in mm, path L in m, "
    "rain I in mm/h, slope S",
    source="FHWA-RD-79-31, 1979, equation 16, as used in a public implementation (second-hand)",
    validity="depth above the tops of the texture; slope 0.5 to 8 percent, rain to 150 mm/h, "
    "path to 15 m, texture 0.08 to 4 mm (ranges from memory, unverified); found too thin a film "
    "on tined slabs (conference abstract on water film over tined slabs, undated)",
)

FILM_1998 = Formula(
    text="film = (n L I / (36.1 √S))^0.6 - T, with roughness n of sheet flow, path L in m, rain "
    "I in mm/h, slope S, texture T in mm",
    source="NCHRP Web Document 16, chapter 3 and appendix C, 1998; coefficients from memory, "
    "unverified",
    validity="sheet flow, one-dimensional and steady; called unreliable for inner lanes by a "
    "field follow-up in Florida (national library record, undated)",
)

FILM_1968 = Formula(
    text="depth = 0.0474 √(L I) / S^0.2 in mm, with path L in m, rain I in mm/h, slope S",
    source="RRL Report LR 236, 1968 (year and equation from memory, unverified)",
    validity="total depth of water, without a term for texture",
)

GROOVE_FLOW = Formula(
    text="rain = (1/n) w d (w d / (w + 2 d))^(2/3) √S / (p L), with width w, depth d and spacing p "
    "of the grooves, slope S and path L of the water",
    source="open-channel flow with a roughness n of 0.013 (project calculation)",
    validity="a uniform flow that fills the groove; the flow is laminar, so within 40 percent",
)

FINEST_1979 = 0.0762
"""Finest texture of the relation, mm: below it the film would grow with the texture."""

_RANGES_1979 = (
    ("slope", 0.005, 0.08),
    ("rain", 0.0, 152.4),
    ("path", 0.0, 15.24),
    ("texture", FINEST_1979, 4.064),
)
_MM_PER_H = 3.6e6


def drainage_path(width: float, cross_slope: float, grade: float) -> float:
    """Length of the way that water runs across a plane ``width``, in its unit: ``PATH``."""
    return width * hypot(1, grade / cross_slope)


def resultant_slope(cross_slope: float, grade: float) -> float:
    """Slope along the way that water runs: ``PATH``."""
    return hypot(cross_slope, grade)


def film_1979(texture: float, path: float, rain: float, slope: float) -> float:
    """Film above the texture tops in mm; negative while water stays inside the texture."""
    return float(0.01485 * texture**0.11 * path**0.43 * rain**0.59 / slope**0.42 - texture)


def path_of_1979(film: float, texture: float, rain: float, slope: float) -> float:
    """The path in m at the end of which the film is so thick: ``FILM_1979`` turned round."""
    flow = 0.01485 * texture**0.11 * rain**0.59 / slope**0.42
    return float(((film + texture) / flow) ** (1 / 0.43))


def rain_of_1979(film: float, texture: float, path: float, slope: float) -> float:
    """The rain in mm/h that makes the film so thick: ``FILM_1979`` turned round."""
    flow = 0.01485 * texture**0.11 * path**0.43 / slope**0.42
    return float(((film + texture) / flow) ** (1 / 0.59))


def slope_of_1979(film: float, texture: float, path: float, rain: float) -> float:
    """The slope on which the film is so thick: ``FILM_1979`` turned round."""
    flow = 0.01485 * texture**0.11 * path**0.43 * rain**0.59
    return float((flow / (film + texture)) ** (1 / 0.42))


def film_1979_inch(texture_in: float, path_ft: float, rain_in_h: float, slope: float) -> float:
    """The same in the units of the report: inches, feet, inches per hour; never millimetres."""
    depth = 0.00338 * texture_in**0.11 * path_ft**0.43 * rain_in_h**0.59 / slope**0.42
    return float(depth - texture_in)


def outside_1979(texture: float, path: float, rain: float, slope: float) -> tuple[str, ...]:
    """Names of the inputs (mm, m, mm/h) outside the ranges that ``FILM_1979`` was fitted to."""
    values = {"slope": slope, "rain": rain, "path": path, "texture": texture}
    return tuple(
        name for name, low, high in _RANGES_1979 if not low <= values[name] <= high * 1.001
    )


def reynolds(path: float, rain: float, viscosity: float = 1.0e-6) -> float:
    """Reynolds number of the sheet; ``viscosity`` in m²/s, by default water at 20 °C."""
    return rain / _MM_PER_H * path / viscosity


def roughness_of_concrete(reynolds: float) -> float:
    """Manning's n of concrete in sheet flow: 0.319 / Re^0.480 (as ``FILM_1998``: memory)."""
    return float(0.319 / reynolds**0.480)


def roughness_of_dense_asphalt(reynolds: float) -> float:
    """Manning's n of dense asphalt in sheet flow: 0.0823 / Re^0.174 (as ``FILM_1998``: memory)."""
    return float(0.0823 / reynolds**0.174)


def film_1998(texture: float, path: float, rain: float, slope: float, n: float) -> float:
    """Film above the texture tops in mm, ``n`` being Manning's: ``FILM_1998``."""
    return float((n * path * rain / (36.1 * sqrt(slope))) ** 0.6 - texture)


def depth_1968(path: float, rain: float, slope: float) -> float:
    """Total depth of water in mm: ``FILM_1968``."""
    return float(0.0474 * sqrt(path * rain) / slope**0.2)


def rain_that_fills(width: float, depth: float, spacing: float, path: float, slope: float) -> float:
    """Rain in mm/h at which grooves (mm) that carry the water run full: ``GROOVE_FLOW``."""
    area = width * depth * 1e-6
    radius = area / ((width + 2 * depth) * 1e-3)
    flow = area * radius ** (2 / 3) * sqrt(slope) / 0.013
    return float(flow / (spacing * 1e-3 * path) * _MM_PER_H)
