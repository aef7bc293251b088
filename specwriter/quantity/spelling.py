"""How units are written: their synonyms, and units put together with a stroke or "per"."""

from __future__ import annotations

import re
from difflib import get_close_matches

from specwriter.quantity.unit import UNITS, Unit

_SYNONYMS: dict[str, str] = {
    "in": 'inch, inches, ", IN',
    "ft": "foot, feet, ', LF, lin ft, linear foot, linear feet",
    "yd": "yds, yard, yards",
    "mi": "mile, miles",
    "mm": "millimetre, millimetres, millimeter, millimeters",
    "cm": "centimetre, centimetres, centimeter, centimeters",
    "m": "metre, metres, meter, meters",
    "km": "kilometre, kilometres, kilometer, kilometers",
    "in2": "sq in, square inch, square inches",
    "SF": "sq ft, square foot, square feet",
    "SY": "sq yd, square yard, square yards",
    "mm2": "sq mm, square millimetres, square millimeters",
    "cm2": "sq cm, square centimetres, square centimeters",
    "m2": "sq m, square metre, square metres, square meter, square meters",
    "in3": "cu in, cubic inch, cubic inches",
    "ft3": "cu ft, CF, cubic foot, cubic feet",
    "CY": "cu yd, cubic yard, cubic yards",
    "m3": "cu m, cubic metre, cubic metres, cubic meter, cubic meters",
    "gal": "gallon, gallons",
    "mL": "ml, millilitres, milliliters",
    "L": "l, litre, litres, liter, liters",
    "oz": "ounce, ounces",
    "lb": "lbs, pound, pounds",
    "ton": "tons, short ton, short tons",
    "g": "gram, grams",
    "kg": "kilogram, kilograms",
    "t": "tonne, tonnes, metric ton, metric tons",
    "mph": "mi/h",
    "km/h": "kph, kmh",
    "s": "sec, second, seconds",
    "min": "minute, minutes",
    "h": "hr, hrs, hour, hours",
    "days": "d, day",
    "weeks": "wk, week",
    "°F": "F, deg F, degF, degrees F, degrees Fahrenheit, Fahrenheit",
    "°C": "C, deg C, degC, degrees C, degrees Celsius, Celsius",
    "percent": "%, pct, per cent",
    "degrees": "°, deg, degree",
    "dB(A)": "dBA, dB A, dB (A)",
    "MPa": "N/mm2",
    "$": "dollar, dollars, USD",
    "$/SY": "$/yd2",
    "$/SF": "$/ft2",
    "$/CY": "$/yd3",
}

SPELLINGS: dict[str, str] = {symbol: symbol for symbol in UNITS} | {
    word.strip(): symbol for symbol, words in _SYNONYMS.items() for word in words.split(",")
}
# A lone letter means different units in the two cases: t and T, m and M.
_IN_CAPITALS = {word.lower(): symbol for word, symbol in SPELLINGS.items() if len(word) > 1}
_POINT = re.compile(r"(?<=[A-Za-z])\.")
_COMPOUND = re.compile(r"(.*?) ?(?:/|\bper\b) ?(.+)")
_POWERS = str.maketrans("²³", "23", "^")


def find_unit(written: str) -> Unit | None:
    """The unit that is written this way, or ``None``."""
    if written in UNITS:
        return UNITS[written]
    plain = " ".join(_POINT.sub(" ", written.translate(_POWERS)).split()).replace(" /", "/")
    return _known(plain) or _put_together(plain)


def _known(word: str) -> Unit | None:
    symbol = SPELLINGS.get(word) or (_IN_CAPITALS.get(word.lower()) if len(word) > 1 else None)
    return UNITS[symbol] if symbol else None


def _put_together(words: str) -> Unit | None:
    """A unit over a unit, such as ``inches per mile``, ``$ per square yard`` or ``per foot``."""
    match = _COMPOUND.fullmatch(words)
    below = _known(match[2]) if match else None
    if match is None or below is None:
        return None
    if not match[1]:
        return UNITS.get(f"per {below.symbol}")
    above = _known(match[1])
    return _known(f"{above.symbol}/{below.symbol}") if above else None


def suggest_unit(written: str, dimension: str | None = None) -> str | None:
    """The symbol of the unit spelt nearest to an unknown one, or ``None``.

    Only units of ``dimension`` (a key of ``DIMENSIONS``) are suggested, where it is given.
    """
    fits = {
        word: symbol
        for word, symbol in SPELLINGS.items()
        if dimension in (None, UNITS[symbol].dimension)
    }
    for candidate in (written, written.split(" ")[0]):
        if near := get_close_matches(candidate, fits, n=1, cutoff=0.6):
            return fits[near[0]]
    return None
