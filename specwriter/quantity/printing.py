"""Printing a value as written, and in the other unit system beside it.

Rounding rule: a converted number is rounded half up to a power of ten.

- The power is the greatest one that is not above the last written place, converted; a fraction
  of an inch counts as sixty-fourths. So no written precision is lost, and little is invented.
- At least two significant digits are kept, three from 100 up; money keeps its two decimals.
- The numbers of a range or of a tolerance are rounded alike, to the finest place among them.

So 1/8 in prints as 3.2 mm, 0.095 in ± 0.005 in as 2.41 mm ± 0.13 mm, 60 in/mi as 0.95 m/km,
24 ft as 7.3 m, 35,000 lb as 15,900 kg. A number converted back gives the written one within its
last written place.
"""

from __future__ import annotations

from fractions import Fraction
from math import ceil, floor
from typing import Literal

from specwriter.quantity.interval import Interval
from specwriter.quantity.quantity import Amount, Quantity
from specwriter.quantity.unit import KILOMETRE_STATION, RATIO, STATION, UNITS, Unit

Rounding = Literal["half_up", "up", "down"]

_FINEST_FRACTION = Fraction(1, 64)
_CENT = Fraction(1, 100)
_STATION_DIGITS = {STATION: 2, KILOMETRE_STATION: 3}


def other_system(quantity: Quantity) -> str | None:
    """The value in the other unit system, rounded as the module says; ``None`` if there is none."""
    if not quantity.unit.partner or len({a.unit.system for a in quantity.amounts}) > 1:
        return None
    if quantity.form == "list":
        each = (Quantity(amount.text, "value", (amount,)) for amount in quantity.amounts)
        return ", ".join(filter(None, map(other_system, each)))
    unit = UNITS[quantity.unit.partner]
    numbers = _converted(quantity, unit)
    match quantity.form:
        case "at_least" | "at_most":
            return f"{quantity.form.replace('_', ' ')} {_with_unit(numbers[0], unit)}"
        case "range":
            low = _with_unit(numbers[0], UNITS["$"]) if unit.symbol[0] == "$" else numbers[0]
            return f"{low} to {_with_unit(numbers[1], unit)}"
        case "tolerance" if quantity.amounts[1] == quantity.amounts[2]:
            return f"{_with_unit(numbers[0], unit)} ± {_with_unit(numbers[1], unit)}"
        case "tolerance":
            plus, minus = (_with_unit(number, unit) for number in numbers[1:])
            return f"{_with_unit(numbers[0], unit)} +{plus} -{minus}"
        case _:
            return _with_unit(numbers[0], unit)


def _converted(quantity: Quantity, unit: Unit) -> list[str]:
    """The numbers in another unit; behind a nominal value stand differences, without offset."""
    values, steps = [], []
    for index, amount in enumerate(quantity.amounts):
        difference = quantity.form == "tolerance" and index > 0
        size = amount.value * amount.unit.factor / unit.factor
        values.append(size if difference else unit.from_base(amount.base))
        steps.append(_step(amount, unit, values[-1], counts=difference or not unit.offset))
    if quantity.form in ("range", "tolerance"):
        steps = [min(steps)] * len(steps)
    return [decimal_text(*pair) if pair[0] else "0" for pair in zip(values, steps, strict=True)]


def _step(amount: Amount, unit: Unit, value: Fraction, *, counts: bool) -> Fraction:
    """The place a converted number is rounded to; significant digits count from a true zero."""
    written = min(amount.step, _FINEST_FRACTION) if amount.is_fraction else amount.step
    step = _power_below(written * amount.unit.factor / unit.factor)
    if value and counts:
        step = min(step, _power_below(abs(value) / (100 if abs(value) >= 100 else 10)))
    return min(step, _CENT) if unit.symbol.startswith("$") else step


def both_systems(quantity: Quantity) -> str:
    """As written, with the other system in parentheses where there is one."""
    other = other_system(quantity)
    return quantity.text if other is None else f"{quantity.text} ({other})"


def show(base: Fraction, unit: Unit, places: int = 3) -> str:
    """A computed amount (in base units) in the given unit, rounded to ``places`` decimals."""
    if unit in (RATIO, STATION, KILOMETRE_STATION):
        return _special_text(base, unit, 0)
    value = unit.from_base(base)
    if unit.symbol.startswith("$"):
        return _with_unit(decimal_text(value, min(_CENT, Fraction(1, 10**places))), unit)
    return _with_unit(decimal_text(value, Fraction(1, 10**places), trim=True), unit)


def show_like(base: Fraction, sample: Quantity, rounding: Rounding = "half_up") -> str:
    """A computed amount (base units) written the way ``sample`` is.

    Fractions of an inch stay fractions where the amount is a whole number of sixty-fourths;
    everything else is a decimal with one place more than the sample, unless that place is 0.
    ``rounding`` is for decimals.
    """
    first = sample.amounts[0]
    unit = first.unit
    if unit in (RATIO, STATION, KILOMETRE_STATION):
        return _special_text(base, unit, _places(first.step))
    value = unit.from_base(base)
    is_length = unit.dimension == "length"
    if first.is_fraction or (is_length and unit.system == "us" and "." not in first.text):
        if unit.symbol.startswith("in") and (value * 64).denominator == 1:
            return _with_unit(fraction_text(value), unit)
        return _with_unit(decimal_text(value, Fraction(1, 1000), rounding, trim=True), unit)
    step = _power_below(first.step)
    if unit.symbol.startswith("$"):
        return show(base, unit, 2)
    finer, coarse = decimal_text(value, step / 10, rounding), decimal_text(value, step)
    exact = finer in (f"{coarse}0", f"{coarse}.0")
    return _with_unit(coarse if exact else finer, unit)


def _special_text(base: Fraction, unit: Unit, places: int) -> str:
    """A slope as rise to run, or a station."""
    if unit == RATIO:
        if base > 0:
            return f"1:{decimal_text(1 / base, Fraction(1, 10), trim=True)}"
        return show(base, UNITS["percent"])
    digits = _STATION_DIGITS[unit]
    places = max(places - digits, 0)
    number = unit.from_base(abs(base)) * 10 ** (digits + places)
    rest, low = divmod(floor(number + Fraction(1, 2)), 10**places)
    main, high = divmod(rest, 10**digits)
    sign = "-" if base < 0 else ""
    return f"{sign}{main}+{high:0{digits}d}" + (f".{low:0{places}d}" if places else "")


def show_interval_like(interval: Interval, sample: Quantity, *, inward: bool = False) -> str:
    """A computed interval (base units) in words, written the way ``sample`` is.

    ``inward`` rounds so that every value shown lies in the interval, where two ends leave room
    for that: a range to which something is to be moved must not miss by its rounding.
    """
    low, high = interval
    up: Rounding = "up" if inward else "half_up"
    down: Rounding = "down" if inward else "half_up"
    if low is not None and low == high:
        return show_like(low, sample)
    if high is None:
        return f"at least {show_like(low or Fraction(0), sample, up)}"
    if low is None:
        return f"at most {show_like(high, sample, down)}"
    if show_like(low, sample, "up") == show_like(high, sample, "up"):
        up = down = "half_up"
    first, last = show_like(low, sample, up), show_like(high, sample, down)
    return first if first == last else f"{first} to {last}"


def fraction_text(value: Fraction) -> str:
    """A number as a whole or mixed number, such as 1-1/2."""
    whole, rest = divmod(abs(value), 1)
    sign = "-" if value < 0 else ""
    if not rest:
        return f"{sign}{whole}"
    part = f"{rest.numerator}/{rest.denominator}"
    return f"{sign}{whole}-{part}" if whole else f"{sign}{part}"


def decimal_text(
    value: Fraction, step: Fraction, rounding: Rounding = "half_up", *, trim: bool = False
) -> str:
    """``value`` rounded to a multiple of ``step`` (a power of ten); commas from 10,000.

    Half up and by size alone, ``up`` and ``down`` on the number line.
    """
    places = _places(step)
    if rounding == "half_up":
        scaled = floor(abs(value) / step + Fraction(1, 2)) * step
    else:
        scaled = abs(ceil(value / step) if rounding == "up" else floor(value / step)) * step
    whole, rest = divmod(int(scaled * 10**places), 10**places)
    text = f"{whole:,}" if whole >= 10000 else str(whole)
    if places:
        text += f".{rest:0{places}d}"
        text = text.rstrip("0").rstrip(".") if trim else text
    return f"-{text}" if value < 0 and scaled else text


def _places(step: Fraction) -> int:
    """Decimal places of a power of ten."""
    return len(str(step.denominator)) - 1


def _power_below(value: Fraction) -> Fraction:
    """The greatest power of ten that is not above ``value`` (``value`` > 0)."""
    power = Fraction(10) ** (len(str(value.numerator)) - len(str(value.denominator)))
    return power if power <= value else power / 10


def _with_unit(number: str, unit: Unit) -> str:
    if unit.symbol.startswith("$"):
        sign = "-" if number.startswith("-") else ""
        return f"{sign}${number.removeprefix('-')}{unit.symbol[1:]}"
    return f"{number} {unit.symbol}".rstrip()
