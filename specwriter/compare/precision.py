"""When two written values are one value restated, and how far apart two values are.

Two numbers in different units are the same within the written precision when

- they differ by at most half of the last written place of the finer of the two (fractions are
  exact), and by no more than 0.25 mm for a length or 5 percent, whichever is more: a coarse last
  place must not hide a different size (common practice, no source); or
- one of them is what ``quantity.other_system`` prints for the other.

In one unit, a fraction and its rounded decimal are the same within ``Amount.slack``; any other
two numbers must be equal. The same number in another unit is never a restatement.
"""

from __future__ import annotations

from fractions import Fraction

from specwriter.quantity import Amount, Interval, Quantity, other_system, parse
from specwriter.quantity.printing import decimal_text
from specwriter.quantity.unit import UNITS, Unit

_LENGTH_CAP = Fraction("0.25") / 1000
_SHARE_CAP = Fraction(5, 100)
_ALIKE = {"percent": "slope"}
_DIFFERENCE_UNITS = {"sta": UNITS["ft"], "km sta": UNITS["m"], "1:n": UNITS["percent"]}


def comparable(old: Quantity, new: Quantity) -> bool:
    """True when both measure the same kind of thing (a slope may be given in percent)."""
    return _kind(old.unit) == _kind(new.unit)


def _kind(unit: Unit) -> str:
    return _ALIKE.get(unit.dimension, unit.dimension)


def restated(old: Quantity, new: Quantity, old_allows: Interval, new_allows: Interval) -> bool:
    """True when both allow the same values within the precision in which they are written."""
    if not comparable(old, new) or unit_slip(old, new):
        return False
    if old_allows == new_allows:
        return True
    if _printed(old, new) or _printed(new, old):
        return True
    if old.form == new.form and len(old.amounts) == len(new.amounts):
        return all(
            abs(_size(old, i) - _size(new, i)) <= _granted(was, now)
            for i, (was, now) in enumerate(zip(old.amounts, new.amounts, strict=True))
        )
    return _ends_agree(old, new, old_allows, new_allows)


def unit_slip(old: Quantity, new: Quantity) -> bool:
    """True when the numbers stayed the same and the unit did not."""
    numbers = [amount.value for amount in old.amounts] == [amount.value for amount in new.amounts]
    units = [amount.unit for amount in old.amounts] == [amount.unit for amount in new.amounts]
    return numbers and not units and any(a.base != b.base for a, b in _both(old, new))


def _both(old: Quantity, new: Quantity) -> zip[tuple[Amount, Amount]]:
    return zip(old.amounts, new.amounts, strict=False)


def _printed(one: Quantity, other: Quantity) -> bool:
    text = other_system(one)
    if text is None or one.form != other.form:
        return False
    printed = parse(text)
    return [(a.value, a.unit.factor) for a in printed.amounts] == [
        (a.value, a.unit.factor) for a in other.amounts
    ]


def _ends_agree(old: Quantity, new: Quantity, was: Interval, now: Interval) -> bool:
    granted = min(_granted(a, b) for a in old.amounts for b in new.amounts)
    return _end_agrees(was.low, now.low, granted) and _end_agrees(was.high, now.high, granted)


def _end_agrees(old: Fraction | None, new: Fraction | None, granted: Fraction) -> bool:
    if old is None or new is None:
        return old is new
    return abs(old - new) <= granted


def _granted(old: Amount, new: Amount) -> Fraction:
    """How far two writings of one number may lie apart, in base units."""
    if old.unit.factor == new.unit.factor:
        return max(old.slack, new.slack) if old.is_fraction != new.is_fraction else Fraction(0)
    halves = [a.step * a.unit.factor / 2 for a in (old, new) if not a.is_fraction]
    cap = _SHARE_CAP * max(abs(a.value * a.unit.factor) for a in (old, new))
    if old.unit.dimension == "length":
        cap = max(cap, _LENGTH_CAP)
    return min(*halves, cap) if halves else Fraction(0)


def _size(quantity: Quantity, index: int) -> Fraction:
    """One of its numbers in base units; a tolerance part is a difference, without an offset."""
    amount = quantity.amounts[index]
    if quantity.form == "tolerance" and index:
        return amount.value * amount.unit.factor
    return amount.base


def difference(old: Quantity, new: Quantity) -> str:
    """How far the new numbers of a comparable value lie from the old ones, in the unit of the new.

    Empty when the numbers are equal, or stand for different things.
    """
    if old.form == "list" or len(old.amounts) != len(new.amounts):
        return ""
    if (old.form == "tolerance") != (new.form == "tolerance"):
        return ""
    sentences = []
    for index, (was, now) in enumerate(_both(old, new)):
        if moved := _size(new, index) - _size(old, index):
            more = "more" if moved > 0 else "less"
            gap = gap_text(abs(moved), now)
            sentences.append(f"{amount_text(now)} is {gap} {more} than {amount_text(was)}")
    return "; ".join(dict.fromkeys(sentences))


def gap_text(gap: Fraction, like: Amount) -> str:
    """A difference in base units, printed in the unit and manner of an amount."""
    unit = _DIFFERENCE_UNITS.get(like.unit.symbol, like.unit)
    if like.unit.symbol == "percent":
        points = decimal_text(gap / unit.factor, Fraction(1, 1000), trim=True)
        return f"{points} percentage {'point' if points == '1' else 'points'}"
    value = gap / unit.factor
    if like.is_fraction and value.denominator in (1, 2, 4, 8, 16, 32, 64):
        return _joined(_fraction_text(value), unit)
    exact = next((n for n in range(7) if (value * 10**n).denominator == 1), None)
    if exact is not None:
        return _joined(decimal_text(value, Fraction(1, 10**exact)), unit)
    places = 3
    while value * 10**places < 100:
        places += 1
    return "about " + _joined(decimal_text(value, Fraction(1, 10**places), trim=True), unit)


def _fraction_text(value: Fraction) -> str:
    whole, rest = divmod(value, 1)
    if not rest:
        return str(whole)
    return f"{whole}-{rest}" if whole else str(rest)


def amount_text(amount: Amount) -> str:
    """One number with its unit, as written."""
    if amount.unit.symbol in _DIFFERENCE_UNITS:
        return amount.text
    if amount.unit.symbol.startswith("$"):
        return amount.text + amount.unit.symbol[1:]
    return f"{amount.text} {amount.unit.symbol}".strip()


def _joined(number: str, unit: Unit) -> str:
    if unit.symbol.startswith("$"):
        return f"${number}{unit.symbol[1:]}"
    return f"{number} {unit.symbol}".strip()
