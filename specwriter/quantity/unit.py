"""The units a texture specification uses, each with its exact factor to SI.

Factors are exact by definition: the international foot (0.3048 m, not the survey foot, which is
2 parts in a million longer) and pound (0.45359237 kg), standard gravity (9.80665 m/s2), the
US gallon (231 cubic inches), the short ton (2000 lb): NIST SP 811, appendix B, 2008 (memory,
unverified; the tests hold every factor against a general-purpose unit library).
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from typing import Literal

System = Literal["us", "si", "both"]

DIMENSIONS: dict[str, str] = {
    "length": "a length, such as 3/4 in or 19 mm",
    "roughness": "a roughness, such as 60 in/mi or 0.95 m/km",
    "area": "an area, such as 12000 SY or 10000 m2",
    "volume": "a volume, such as 4 gal or 15 L",
    "mass": "a mass, such as 35000 lb or 15900 kg",
    "speed": "a speed, such as 45 mph or 70 km/h",
    "pressure": "a pressure, such as 3500 psi or 24 MPa",
    "time": "a time, such as 14 days or 12 h",
    "temperature": "a temperature, such as 40 °F or 4 °C",
    "rain": "a rain intensity, such as 2 in/h or 50 mm/h",
    "per_length": "a number per length, such as 57 per ft or 187 per m",
    "percent": "a percentage, such as 95 percent",
    "angle": "an angle, such as 90 degrees",
    "sound": "a sound level, such as 101 dB(A)",
    "slope": "a slope, such as 2 percent or 1:48",
    "station": "a station, such as 120+00",
    "money": "an amount of money, such as $600",
    "money_per_area": "a price per area, such as $4.50/SY",
    "money_per_length": "a price per length, such as $2.10/ft",
    "money_per_volume": "a price per volume, such as $0.40/gal",
    "money_per_mass": "a price per mass, such as $35/ton",
    "number": "a plain number, such as 10",
}


@dataclass(frozen=True, slots=True)
class Unit:
    """A unit as it is printed; ``value * factor + offset`` is the amount in the base unit."""

    symbol: str
    dimension: str
    factor: Fraction
    system: System
    partner: str = ""
    """Symbol of the unit of the other system that a dual value is printed in."""
    offset: Fraction = Fraction(0)

    def to_base(self, value: Fraction) -> Fraction:
        """An amount in this unit, expressed in the base unit of its dimension."""
        return value * self.factor + self.offset

    def from_base(self, value: Fraction) -> Fraction:
        """An amount in the base unit, expressed in this unit."""
        return (value - self.offset) / self.factor


_INCH = Fraction("0.0254")
_FOOT = Fraction("0.3048")
_YARD = Fraction("0.9144")
_MILE = Fraction("1609.344")
_POUND = Fraction("0.45359237")
_POUND_FORCE = _POUND * Fraction("9.80665")
_GALLON = 231 * _INCH**3
_HOUR = Fraction(3600)
_DAY = Fraction(86400)
_F = Fraction

_ROWS: tuple[Unit, ...] = (
    Unit("in", "length", _INCH, "us", "mm"),
    Unit("ft", "length", _FOOT, "us", "m"),
    Unit("yd", "length", _YARD, "us", "m"),
    Unit("mi", "length", _MILE, "us", "km"),
    Unit("mm", "length", _F(1, 1000), "si", "in"),
    Unit("cm", "length", _F(1, 100), "si", "in"),
    Unit("m", "length", _F(1), "si", "ft"),
    Unit("km", "length", _F(1000), "si", "mi"),
    Unit("in/mi", "roughness", _INCH / _MILE, "us", "m/km"),
    Unit("m/km", "roughness", _F(1, 1000), "si", "in/mi"),
    Unit("mm/km", "roughness", _F(1, 10**6), "si", "in/mi"),
    Unit("mm/m", "roughness", _F(1, 1000), "si", "in/mi"),
    Unit("in/ft", "slope", _INCH / _FOOT, "us"),
    Unit("ft/ft", "slope", _F(1), "us"),
    Unit("m/m", "slope", _F(1), "si"),
    Unit("in2", "area", _INCH**2, "us", "cm2"),
    Unit("SY", "area", _YARD**2, "us", "m2"),
    Unit("yd2", "area", _YARD**2, "us", "m2"),
    Unit("SF", "area", _FOOT**2, "us", "m2"),
    Unit("ft2", "area", _FOOT**2, "us", "m2"),
    Unit("mm2", "area", _F(1, 10**6), "si", "in2"),
    Unit("cm2", "area", _F(1, 10**4), "si", "in2"),
    Unit("m2", "area", _F(1), "si", "SY"),
    Unit("gal", "volume", _GALLON, "us", "L"),
    Unit("in3", "volume", _INCH**3, "us", "cm3"),
    Unit("ft3", "volume", _FOOT**3, "us", "m3"),
    Unit("yd3", "volume", _YARD**3, "us", "m3"),
    Unit("CY", "volume", _YARD**3, "us", "m3"),
    Unit("mm3", "volume", _F(1, 10**9), "si", "in3"),
    Unit("cm3", "volume", _F(1, 10**6), "si", "in3"),
    Unit("mL", "volume", _F(1, 10**6), "si", "in3"),
    Unit("L", "volume", _F(1, 1000), "si", "gal"),
    Unit("m3", "volume", _F(1), "si", "CY"),
    Unit("oz", "mass", _POUND / 16, "us", "g"),
    Unit("lb", "mass", _POUND, "us", "kg"),
    Unit("ton", "mass", 2000 * _POUND, "us", "t"),
    Unit("g", "mass", _F(1, 1000), "si", "oz"),
    Unit("kg", "mass", _F(1), "si", "lb"),
    Unit("t", "mass", _F(1000), "si", "ton"),
    Unit("mph", "speed", _MILE / _HOUR, "us", "km/h"),
    Unit("km/h", "speed", _F(1000) / _HOUR, "si", "mph"),
    Unit("ft/s", "speed", _FOOT, "us", "m/s"),
    Unit("m/s", "speed", _F(1), "si", "ft/s"),
    Unit("ft/min", "speed", _FOOT / 60, "us", "m/min"),
    Unit("m/min", "speed", _F(1, 60), "si", "ft/min"),
    Unit("psi", "pressure", _POUND_FORCE / _INCH**2, "us", "MPa"),
    Unit("ksi", "pressure", 1000 * _POUND_FORCE / _INCH**2, "us", "MPa"),
    Unit("kPa", "pressure", _F(1000), "si", "psi"),
    Unit("MPa", "pressure", _F(10**6), "si", "psi"),
    Unit("s", "time", _F(1), "both"),
    Unit("min", "time", _F(60), "both"),
    Unit("h", "time", _HOUR, "both"),
    Unit("days", "time", _DAY, "both"),
    Unit("weeks", "time", 7 * _DAY, "both"),
    Unit("°F", "temperature", _F(5, 9), "us", "°C", _F("273.15") - _F(160, 9)),
    Unit("°C", "temperature", _F(1), "si", "°F", _F("273.15")),
    Unit("in/h", "rain", _INCH / _HOUR, "us", "mm/h"),
    Unit("mm/h", "rain", _F(1, 1000) / _HOUR, "si", "in/h"),
    Unit("per in", "per_length", 1 / _INCH, "us", "per m"),
    Unit("per ft", "per_length", 1 / _FOOT, "us", "per m"),
    Unit("per yd", "per_length", 1 / _YARD, "us", "per m"),
    Unit("per mi", "per_length", 1 / _MILE, "us", "per km"),
    Unit("per m", "per_length", _F(1), "si", "per ft"),
    Unit("per km", "per_length", _F(1, 1000), "si", "per mi"),
    Unit("percent", "percent", _F(1, 100), "both"),
    Unit("degrees", "angle", _F(1), "both"),
    Unit("dB(A)", "sound", _F(1), "both"),
    Unit("$", "money", _F(1), "both"),
    Unit("$/SY", "money_per_area", 1 / _YARD**2, "us", "$/m2"),
    Unit("$/SF", "money_per_area", 1 / _FOOT**2, "us", "$/m2"),
    Unit("$/m2", "money_per_area", _F(1), "si", "$/SY"),
    Unit("$/ft", "money_per_length", 1 / _FOOT, "us", "$/m"),
    Unit("$/mi", "money_per_length", 1 / _MILE, "us", "$/km"),
    Unit("$/m", "money_per_length", _F(1), "si", "$/ft"),
    Unit("$/km", "money_per_length", _F(1, 1000), "si", "$/mi"),
    Unit("$/lb", "money_per_mass", 1 / _POUND, "us", "$/kg"),
    Unit("$/kg", "money_per_mass", _F(1), "si", "$/lb"),
    Unit("$/gal", "money_per_volume", 1 / _GALLON, "us", "$/L"),
    Unit("$/CY", "money_per_volume", 1 / _YARD**3, "us", "$/m3"),
    Unit("$/L", "money_per_volume", _F(1000), "si", "$/gal"),
    Unit("$/m3", "money_per_volume", _F(1), "si", "$/CY"),
    Unit("$/ton", "money_per_mass", 1 / (2000 * _POUND), "us", "$/t"),
    Unit("$/t", "money_per_mass", _F(1, 1000), "si", "$/ton"),
)

UNITS: dict[str, Unit] = {unit.symbol: unit for unit in _ROWS}

PLAIN = Unit("", "number", _F(1), "both")
RATIO = Unit("1:n", "slope", _F(1), "both")
STATION = Unit("sta", "station", 100 * _FOOT, "us")
KILOMETRE_STATION = Unit("km sta", "station", _F(1000), "si")
