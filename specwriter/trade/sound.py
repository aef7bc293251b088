"""Noise of tyre on pavement: at the source (OBSI), at the roadside, over speed and temperature.

Levels in dB(A), temperatures in degrees Celsius, speeds in any one unit unless named.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from math import log10
from typing import Literal

from specwriter.trade.formula import Formula, identity

SPEEDS_MPH = (35, 70)
"""Speeds between which a level is carried from one to another. Common practice, no source."""

SPEED_SLOPE = Formula(
    text="ΔL = k log10(V2 / V1), k from 25 to 40 dB",
    source="memory, unverified",
    validity="the same tyre and surface, {} to {} mph (common practice, no source)".format(
        *SPEEDS_MPH
    ),
)

ROADSIDE = Formula(
    text="roadside level = source level - 21.9 dB at 25 ft (sd 1.2), - 28.5 dB at 50 ft (sd 1.7)",
    source="NCHRP Report 630, table 9, 2009 (year from memory)",
    validity="light vehicles and the standard reference test tyre; trucks 8.9 to 9.3 dB less",
)

CLOSE_PROXIMITY = Formula(
    text="OBSI = CPX + 2 dB (sd 1.1)",
    source="NCHRP Report 630, page 9, 2009 (year from memory)",
    validity="from the offsets of both to the pass-by level",
)

TEMPERATURE = Formula(
    text="level at 20 °C = level - c (T - 20 °C); c = -0.072 or -0.027 dB/°C",
    source="-0.072: AASHTO T 360, from memory, unverified; -0.027: California OBSI temperature "
    "study, abstract, undated",
    validity="air temperature; -0.027 on five asphalt surfaces from 1 to 22 °C; the two disagree "
    "by 2.7 times, and a federal report warns that general corrections can mislead",
)

TONE = identity("frequency = speed / spacing")

AGEING = Formula(
    text="the quietest level of a texture rises by 1 dB or more within 5 years",
    source="memory, unverified (about 99 new and up to 101 in service); Washington State DOT "
    "WA-RD 814.1, 2013: textures rose to 104 to 108 dB(A) under studded tyres",
    validity="levels at 60 mph (97 km/h); studded tyres age a surface faster",
)

AGEING_DB, AGED_YEARS = 1, 5
"""Least rise and the years after which it is expected: ``AGEING``."""

STANDARD_SPEED_MPH = 60
"""Speed of OBSI unless stated otherwise: AASHTO T 360-16(2020), scope."""

SECTION_FT = 440
"""Length of an OBSI test section: NCHRP Report 630, page 18, 2009 (year from memory)."""

TYRE_SPREAD = 1.1
"""Mean range of eleven new reference tyres, dB: NCHRP 1-44(1) tyre study, abstract, undated."""

BETWEEN_SCALES = 92
"""dB(A) below which no texture lies beside the tyre, and above which none does at the roadside.
Source: project calculation from ``BANDS`` and ``ROADSIDE``."""

SLOPE_RANGE = (25.0, 40.0)
CORRECTIONS_PER_C = {"AASHTO T 360 (memory, unverified)": -0.072, "California study": -0.027}
_OFFSETS: dict[int, tuple[float, float]] = {25: (21.9, 1.2), 50: (28.5, 1.7)}
_DISTANCES: tuple[tuple[re.Pattern[str], Literal[25, 50]], ...] = (
    (re.compile(r"\b25[ -]?(?:ft|feet|foot)\b|\b7\.[56]\d*[ -]?m\b", re.IGNORECASE), 25),
    (re.compile(r"\b50[ -]?(?:ft|feet|foot)\b|\b15(?:\.[0-4]\d*)?[ -]?m\b", re.IGNORECASE), 50),
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Band:
    """Source levels that a texture reaches at 60 mph, from a quiet new one to a loud aged one."""

    quietest: int
    loudest: int
    source: str


_RECALLED = "bands of textures, new to aged, from memory, unverified"
BANDS: dict[str, Band] = {
    "diamond_grinding": Band(quietest=99, loudest=105, source=_RECALLED),
    "longitudinal_grooving": Band(quietest=99, loudest=105, source=_RECALLED),
    "next_generation_concrete_surface": Band(
        quietest=98,
        loudest=102,
        source=f"{_RECALLED}; two new lanes measured 99.6 and 101.6: Washington State DOT "
        "WA-RD 767.1, 2011",
    ),
    "transverse_grooving": Band(
        quietest=101,
        loudest=111,
        source=f"{_RECALLED}, of transverse tines, whose grooves strike the tyre alike",
    ),
}
"""Texture → band. Tined surfaces themselves are not saw-cut and stand in no job."""


def level_change(from_speed: float, to_speed: float, slope: float) -> float:
    """Rise of the level between two speeds, in dB; ``slope`` in dB per decade: ``SPEED_SLOPE``."""
    return slope * log10(to_speed / from_speed)


def roadside(source_level: float, distance_ft: Literal[25, 50]) -> tuple[float, float]:
    """Level of a passing light vehicle and its standard deviation: ``ROADSIDE``."""
    offset, deviation = _OFFSETS[distance_ft]
    return source_level - offset, deviation


def microphone_distance(words: str) -> Literal[25, 50] | None:
    """The distance in feet that words name, of those for which an offset is published."""
    return next((feet for pattern, feet in _DISTANCES if pattern.search(words)), None)


def source_behind(roadside_level: float, distance_ft: Literal[25, 50]) -> tuple[float, float]:
    """OBSI behind a level at the roadside, and its standard deviation: ``ROADSIDE``."""
    offset, deviation = _OFFSETS[distance_ft]
    return roadside_level + offset, deviation


def quietest_offset(distance_ft: Literal[25, 50]) -> float:
    """How far a passing light vehicle may lie below OBSI: two standard deviations more."""
    offset, deviation = _OFFSETS[distance_ft]
    return offset + 2 * deviation


def is_known_speed(speed_mph: float) -> bool:
    """True for a speed to which levels are carried; soft conversions of the ends count."""
    slow, fast = SPEEDS_MPH
    return slow - 1 <= speed_mph <= fast + 1


def at_speed(level_at_60: float, speed_mph: float, side: Literal[-1, 1]) -> float:
    """The level at another speed, at the quiet (-1) or loud (1) end of ``SPEED_SLOPE``."""
    ends = [level_change(STANDARD_SPEED_MPH, speed_mph, slope) for slope in SLOPE_RANGE]
    return level_at_60 + (min(ends) if side < 0 else max(ends))


def obsi_of_cpx(cpx: float) -> tuple[float, float]:
    """OBSI level from a CPX level, and its standard deviation: ``CLOSE_PROXIMITY``."""
    return cpx + 2, 1.1


def at_20_degrees(level: float, temperature: float) -> dict[str, float]:
    """The level corrected to 20 °C by each published correction: ``TEMPERATURE``."""
    return {name: level - c * (temperature - 20) for name, c in CORRECTIONS_PER_C.items()}


def tone(speed: float, spacing: float) -> float:
    """Frequency in Hz of a uniform transverse pattern; m/s and m: ``TONE``."""
    return speed / spacing
