"""Speed from which a tyre rides up on water: three relations that answer different questions.

Each is an indication of onset for one car tyre on one film, never a safe speed.
"""

from __future__ import annotations

from math import sqrt

from specwriter.trade.formula import Formula

SPEED_1979 = Formula(
    text="V = SD^0.04 P^0.3 (TD + 1)^0.06 A (mph); A = the greater of 10.409/WD^0.06 + 3.507 and "
    "(28.952/WD^0.06 - 7.817) TXD^0.14; SD 10 percent, P psi, TD 32nds of an inch, WD and TXD in",
    source="FHWA-RD-79-31, 1979, as used in a public implementation (second-hand)",
    validity="onset, read as 10 percent spin-down, of a car tyre at 16 to 50 psi (range from "
    "memory, unverified) on a film above the texture",
)

SPEED_1998 = Formula(
    text="V = 26.04 WFT^-0.259 below a film of 0.095 in, else 3.09 A with A as in 1979 (mph, in)",
    source="NCHRP Web Document 16 (project 1-29), 1998; coefficients from memory, unverified",
    validity="a car tyre at 24 psi with 3/32 in of tread; up to 17 mph above the 1979 relation on "
    "a film of 0.5 mm (project calculation)",
)

SPEED_NASA = Formula(
    text="V = 10.35 √p (mph, psi) = 9 √p (kt, psi) = 6.35 √p (km/h, kPa)",
    source="NASA TN D-2056, 1963 (year from memory), as used in an online worked example "
    "(second-hand)",
    validity="a rolling smooth tyre, or a flooded surface; no term for film or texture",
)

THIN_FILM_IN = 0.095
_PRESSURE_PSI = (16.0, 50.0)


def surface_term(film_in: float, texture_in: float) -> float:
    """The term A of ``SPEED_1979``; the texture counts only where it is coarse."""
    thin = film_in**0.06
    return float(max(10.409 / thin + 3.507, (28.952 / thin - 7.817) * texture_in**0.14))


def speed_1979(
    film_in: float, texture_in: float, pressure_psi: float, tread_32nds: float, spin_down: float
) -> float:
    """Onset speed in mph for a tyre; ``spin_down`` in percent: ``SPEED_1979``.

    Raises ``ValueError`` where the film is not above the texture or the pressure is not in psi.
    """
    if film_in <= 0:
        raise ValueError("the water stays inside the texture: no film, no onset speed")
    if not _PRESSURE_PSI[0] <= pressure_psi <= _PRESSURE_PSI[1]:
        raise ValueError(f"a tyre pressure of {pressure_psi:g} psi lies outside 16 to 50 psi")
    tyre = spin_down**0.04 * pressure_psi**0.3 * (tread_32nds + 1) ** 0.06
    return float(tyre * surface_term(film_in, texture_in))


def film_at_1979(
    speed: float, texture_in: float, pressure_psi: float, tread_32nds: float, spin_down: float
) -> float:
    """Film in inches on which the onset is at ``speed`` (mph): ``SPEED_1979`` turned round.

    Raises ``ValueError`` for a speed below that of the thickest film.
    """
    tyre = spin_down**0.04 * pressure_psi**0.3 * (tread_32nds + 1) ** 0.06
    term = speed / tyre
    if term <= 3.507:
        raise ValueError(f"no film brings the onset down to {speed:g} mph")
    smooth = 10.409 / (term - 3.507)
    coarse = 28.952 / (term / texture_in**0.14 + 7.817)
    return float(max(smooth, coarse) ** (1 / 0.06))


def speed_1998(film_in: float, texture_in: float) -> float:
    """Onset speed in mph: ``SPEED_1998``. Raises ``ValueError`` where there is no film."""
    if film_in <= 0:
        raise ValueError("the water stays inside the texture: no film, no onset speed")
    if film_in < THIN_FILM_IN:
        return float(26.04 * film_in**-0.259)
    return 3.09 * surface_term(film_in, texture_in)


def speed_nasa_mph(pressure_psi: float) -> float:
    """Speed in mph on a flooded surface: ``SPEED_NASA``."""
    return 10.35 * sqrt(pressure_psi)


def speed_nasa_knots(pressure_psi: float) -> float:
    """The same in knots; 9 times the root of psi is knots, not miles per hour."""
    return 9 * sqrt(pressure_psi)


def speed_nasa_kmh(pressure_kpa: float) -> float:
    """The same in km/h from kPa."""
    return 6.35 * sqrt(pressure_kpa)
