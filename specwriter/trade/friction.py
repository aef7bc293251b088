"""Friction over speed, tyre and texture: two models that disagree, so the model is named.

Speeds in km/h, textures in mm (MPD, or MTD in inches for the exponential form), skid numbers 0 to
100, the international friction index 0 to 1.
"""

from __future__ import annotations

from dataclasses import dataclass
from itertools import pairwise
from math import exp
from typing import Literal

from specwriter.trade.formula import Formula

Tyre = Literal["ribbed", "smooth"]
SpeedModel = Literal["friction index", "exponential skid number"]

SPEED_NUMBER = Formula(
    text="Sp = 14.2 + 89.7 MPD (km/h, mm)",
    source="international harmonisation experiment, 1995, as used in four public texts "
    "(second-hand); ASTM E1960-07(2015) takes MPD alone",
    validity="surfaces on which MPD is what the tyre meets; not calibrated on grooves",
)

SPEED_CONVERSION = Formula(
    text="F(S) = F60 exp((60 - S) / Sp)",
    source="international harmonisation experiment, 1995, as used in public texts (second-hand)",
    validity="slip speeds of a locked wheel; never after another speed model",
)

F60_OF_DFT = Formula(
    text="F60 = 0.081 + 0.732 DFT20 exp(-40 / Sp)",
    source="ASTM E1960, coefficients from memory, unverified",
    validity="the dynamic friction tester at 20 km/h with the MPD of the same surface",
)

F60_OF_SKID_NUMBER = Formula(
    text="F60 = A + B SN/100 exp((S - 60)/Sp) + C MPD; smooth tyre 0.045, 0.925, 0; "
    "ribbed tyre -0.023, 0.607, 0.098",
    source="constants of the international harmonisation experiment, from memory, unverified",
    validity="a locked wheel; screening only, not calibrated on grooves; within 8 skid numbers",
)

EXPONENTIAL = Formula(
    text="SN(V) = SN0 exp(-PNG V / 100); PNG = 0.157 MTD^-0.47 (mph, in)",
    source="university pavement textbook, 2nd edition, equations 9.31 to 9.34, undated "
    "(second-hand)",
    validity="skid numbers of one tyre; never after another speed model",
)

GUIDE_MINIMUM = Formula(
    text="SN at 40 mph by mean traffic speed: 31, 33, 37, 41, 46, 51 at 30, 40, 50, 60, 70, 80 mph",
    source="NCHRP Report 37, 1967 (year and values from memory, unverified)",
    validity="a guide for rural main roads; an agency's own levels govern",
)

GUIDE_LEVELS = {30: 31, 40: 33, 50: 37, 60: 41, 70: 46, 80: 51}
"""Mean traffic speed in mph → skid number: ``GUIDE_MINIMUM``."""

SCATTER_OF_TYRES = 8
"""Skid numbers by which a ribbed and a smooth tyre may differ from the implied pair: project
judgement on constants from memory, unverified."""

_CONSTANTS: dict[Tyre, tuple[float, float, float]] = {
    "smooth": (0.045, 0.925, 0.0),
    "ribbed": (-0.023, 0.607, 0.098),
}
_KMH_PER_MPH = 1.609344


@dataclass(frozen=True, slots=True, kw_only=True)
class SkidNumber:
    """A skid number at a speed; ``model`` names the one that made it, ``None`` if measured."""

    value: float
    speed: float
    model: SpeedModel | None = None


def speed_number(mpd: float) -> float:
    """How slowly friction falls with speed, in km/h: ``SPEED_NUMBER``."""
    return 14.2 + 89.7 * mpd


def speed_factor(from_speed: float, to_speed: float, speed_number: float) -> float:
    """Friction at one speed over friction at another: ``SPEED_CONVERSION``."""
    return exp((from_speed - to_speed) / speed_number)


def f60_of_dft(dft20: float, mpd: float) -> float:
    """The friction index from the dynamic friction tester: ``F60_OF_DFT``."""
    return 0.081 + 0.732 * dft20 * exp(-40 / speed_number(mpd))


def f60_of_skid_number(number: float, speed: float, mpd: float, tyre: Tyre) -> float:
    """The friction index from a locked wheel: ``F60_OF_SKID_NUMBER``."""
    a, b, c = _CONSTANTS[tyre]
    return a + b * number / 100 * speed_factor(speed, 60, speed_number(mpd)) + c * mpd


def skid_number_of_f60(f60: float, speed: float, mpd: float, tyre: Tyre) -> float:
    """The skid number that goes with a friction index: ``F60_OF_SKID_NUMBER``, turned round."""
    a, b, c = _CONSTANTS[tyre]
    return 100 * (f60 - a - c * mpd) / b / speed_factor(speed, 60, speed_number(mpd))


def number_of_other_tyre(number: float, speed: float, mpd: float, tyre: Tyre) -> float:
    """What the other tyre would show where ``tyre`` shows ``number``, at the same index."""
    other: Tyre = "smooth" if tyre == "ribbed" else "ribbed"
    return skid_number_of_f60(f60_of_skid_number(number, speed, mpd, tyre), speed, mpd, other)


def gradient(mtd_in: float) -> float:
    """Fall of a skid number with speed, PNG, in h/mi: ``EXPONENTIAL``."""
    return float(0.157 * mtd_in**-0.47)


def skid_number_at(
    number: SkidNumber, speed: float, model: SpeedModel, *, mpd: float, mtd: float
) -> SkidNumber:
    """A skid number at another speed (km/h) by the named model; ``mpd`` and ``mtd`` in mm.

    Raises ``ValueError`` where the number has come from the other model: they are never chained.
    """
    if number.model not in (None, model):
        raise ValueError(f"a number from the model '{number.model}' is not passed to '{model}'")
    if model == "friction index":
        factor = speed_factor(number.speed, speed, speed_number(mpd))
    else:
        change = (number.speed - speed) / _KMH_PER_MPH
        factor = exp(gradient(mtd / 25.4) * change / 100)
    return SkidNumber(value=number.value * factor, speed=speed, model=model)


def guide_minimum(speed_mph: float) -> float:
    """The guide minimum between the printed speeds; ``ValueError`` outside them."""
    for (slow, low), (fast, high) in pairwise(GUIDE_LEVELS.items()):
        if slow <= speed_mph <= fast:
            return low + (high - low) * (speed_mph - slow) / (fast - slow)
    raise ValueError(f"{speed_mph:g} mph lies outside 30 to 80 mph")
