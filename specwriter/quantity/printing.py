"""Printing a value as written, and in the other unit system beside it.

Rounding rule: the converted number is rounded half up to the power of ten nearest below the
written step (fractions of an inch count as sixty-fourths), and keeps at least two significant
digits. So 1/8 in prints as 3.2 mm, 0.095 in as 2.41 mm, 60 in/mi as 0.95 m/km, 24 ft as 7.3 m.
"""

from __future__ import annotations

from fractions import Fraction
from math import floor

from specwriter.quantity.interval import Interval
from specwriter.quantity.quantity import Amount, Quantity
from specwriter.quantity.unit import UNITS, Unit

_FINEST_FRACTION = Fraction(1, 64)


def other_system(quantity: Quantity) -> str | None:
    """The value in the other unit system, rounded as the module says; ``None`` if there is none."""
    if not all(amount.unit.partner for amount in quantity.amounts):
        return None
    unit = UNITS[quantity.unit.partner]
    numbers = [
        _converted(amount, unit, is_difference=i > 0 and quantity.form == "tolerance")
        for i, amount in enumerate(quantity.amounts)
    ]
    match quantity.form:
        case "at_least" | "at_most":
            return f"{quantity.form.replace('_', ' ')} {_with_unit(numbers[0], unit)}"
        case "range":
            return f"{numbers[0]} to {_with_unit(numbers[1], unit)}"
        case "tolerance" if quantity.amounts[1] == quantity.amounts[2]:
            return f"{_with_unit(numbers[0], unit)} ± {_with_unit(numbers[1], unit)}"
        case "tolerance":
            plus, minus = (_with_unit(number, unit) for number in numbers[1:])
            return f"{_with_unit(numbers[0], unit)} +{plus} -{minus}"
        case _:
            return ", ".join(_with_unit(number, unit) for number in numbers)


def both_systems(quantity: Quantity) -> str:
    """As written, with the other system in parentheses where there is one."""
    other = other_system(quantity)
    return quantity.text if other is None else f"{quantity.text} ({other})"


def show(base: Fraction, unit: Unit, places: int = 3) -> str:
    """A computed amount (in base units) in the given unit, rounded to ``places`` decimals."""
    return _with_unit(decimal_text(unit.from_base(base), Fraction(1, 10**places), trim=True), unit)


def show_like(base: Fraction, sample: Quantity) -> str:
    """A computed amount (base units) written the way ``sample`` is.

    Fractions of an inch stay fractions where the amount is a whole number of sixty-fourths;
    everything else is a decimal with one place more than the sample, unless that place is 0.
    """
    first = sample.amounts[0]
    value = first.unit.from_base(base)
    is_length = first.unit.dimension == "length"
    if first.is_fraction or (is_length and first.unit.system == "us" and "." not in first.text):
        if is_length and (value * 64).denominator == 1:
            return _with_unit(_fraction_text(value), first.unit)
        return _with_unit(decimal_text(value, Fraction(1, 1000), trim=True), first.unit)
    step = _power_below(first.step)
    finer = decimal_text(value, step / 10)
    coarse = decimal_text(value, step)
    exact = finer in (f"{coarse}0", f"{coarse}.0")
    return _with_unit(coarse if exact else finer, first.unit)


def show_interval_like(interval: Interval, sample: Quantity) -> str:
    """A computed interval (base units) in words, written the way ``sample`` is."""
    if interval.low is not None and interval.low == interval.high:
        return show_like(interval.low, sample)
    if interval.low is None or interval.high is None:
        if interval.high is not None:
            return f"at most {show_like(interval.high, sample)}"
        return f"at least {show_like(interval.low or Fraction(0), sample)}"
    low, high = show_like(interval.low, sample), show_like(interval.high, sample)
    return low if low == high else f"{low} to {high}"


def _fraction_text(value: Fraction) -> str:
    whole, rest = divmod(abs(value), 1)
    sign = "-" if value < 0 else ""
    if not rest:
        return f"{sign}{whole}"
    part = f"{rest.numerator}/{rest.denominator}"
    return f"{sign}{whole}-{part}" if whole else f"{sign}{part}"


def decimal_text(value: Fraction, step: Fraction, *, trim: bool = False) -> str:
    """``value`` rounded half up to a multiple of ``step`` (a power of ten)."""
    places = len(str(step.denominator)) - 1
    scaled = floor(abs(value) / step + Fraction(1, 2)) * step
    sign = "-" if value < 0 and scaled else ""
    text = f"{int(scaled):,}" if scaled >= 10000 and places == 0 else _fixed(scaled, places)
    if trim and "." in text:
        text = text.rstrip("0").rstrip(".")
    return sign + text


def _fixed(value: Fraction, places: int) -> str:
    whole, rest = divmod(round(value * 10**places), 10**places)
    return f"{whole}.{rest:0{places}d}" if places else str(whole)


def _converted(amount: Amount, unit: Unit, *, is_difference: bool) -> str:
    value = (
        amount.value * amount.unit.factor / unit.factor
        if is_difference
        else unit.from_base(amount.base)
    )
    step = min(amount.step, _FINEST_FRACTION) if amount.is_fraction else amount.step
    if unit.symbol.startswith("$"):
        return decimal_text(value, Fraction(1, 100))
    step = _power_below(step * amount.unit.factor / unit.factor)
    if value:
        step = min(step, _power_below(abs(value) / 10))
    return decimal_text(value, step)


def _power_below(value: Fraction) -> Fraction:
    """The greatest power of ten that is not above ``value`` (``value`` > 0)."""
    power = Fraction(1)
    while power > value:
        power /= 10
    while power * 10 <= value:
        power *= 10
    return power


def _with_unit(number: str, unit: Unit) -> str:
    if unit.symbol.startswith("$"):
        return f"${number}{unit.symbol[1:]}"
    return f"{number} {unit.symbol}"
