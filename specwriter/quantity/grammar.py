"""The grammar of written values: text in, ``Quantity`` out, or an error at its column.

::

    value     = number unit                         1/8 in   1-1/2 in   0.095 in   60 in/mi
    range     = number [unit] "to" number unit      1/8 to 1/4 in   0.090 in to 0.130 in
    tolerance = number [unit] "±" number unit       3/16 in ± 1/16 in   (also "+/-")
              | number unit "+" number [unit] "-" number [unit]      1/4 in +1/16 in -0 in
    one-sided = "at least" value | "at most" value
    list      = value "," value { "," value }
    number    = whole | decimal | fraction | whole "-" fraction | whole fraction
    station   = digits "+" digits                   120+00 (feet)   1+200 (kilometres)
    ratio     = "1:" number                         1:48
    rise      = number "in per ft"                  1/4 in per ft
    money     = "$" number [ "/" unit ]             $4.50/SY
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from fractions import Fraction

from specwriter.quantity.quantity import Amount, Form, Quantity
from specwriter.quantity.unit import (
    DIMENSIONS,
    KILOMETRE_STATION,
    PLAIN,
    RATIO,
    STATION,
    Unit,
    find_unit,
    suggest_unit,
)


class ValueFault(ValueError):
    """A value that cannot be read: what is wrong, what to do, and at which character (from 0)."""

    def __init__(self, says: str, column: int, width: int = 1, todo: str = "") -> None:
        super().__init__(says)
        self.says = says
        self.column = column
        self.width = max(width, 1)
        self.todo = todo


_NUMBER = re.compile(
    r"(?P<whole>\d+)(?:-|\s+)(?P<num>\d+)/(?P<den>\d+)"
    r"|(?P<fnum>\d+)/(?P<fden>\d+)"
    r"|(?P<decimal>\d{1,3}(?:,\d{3})+(?:\.\d+)?|\d+(?:\.\d+)?)"
)
_UNIT = re.compile(r"[^\d,±+]*?(?:(?<=[a-zA-Z])[23²³]|\^[23])?(?=\s*(?:$|,|±|\+|-\s*\d|\bto\b|\d))")
_STATION = re.compile(r"(\d+)\+(\d{3}|\d{2})(\.\d+)?")
_RISE = re.compile(r"(\d\S*(?:\s\d+/\d+)? ?in)(?: ?/ ?| per )(?:ft|foot)")
_RATIO = re.compile(r"1\s*:\s*(\d+(?:\.\d+)?)")
_LIMITS: tuple[tuple[str, Form], ...] = (
    ("at least", "at_least"),
    ("at most", "at_most"),
    (">=", "at_least"),
    ("<=", "at_most"),
    ("≥", "at_least"),
    ("≤", "at_most"),
)
_VAGUE = {
    "minimum": "at least",
    "min": "at least",
    "more than": "at least",
    "over": "at least",
    "maximum": "at most",
    "max": "at most",
    "less than": "at most",
    "up to": "at most",
    "under": "at most",
    ">": "at least",
    "<": "at most",
}
_LOOSE = ("about", "approximately", "approx", "nominal", "nominally", "around", "~")
_VULGAR = {"½": "1/2", "¼": "1/4", "¾": "3/4", "⅛": "1/8", "⅜": "3/8", "⅝": "5/8", "⅞": "7/8"}
_ALSO_ALLOWED = {"slope": ("percent",), "number": ()}


def parse(text: str, dimension: str | None = None) -> Quantity:
    """Read one written value; ``dimension`` is a key of ``DIMENSIONS``, or ``None`` for any.

    Raises ``ValueFault`` with the column of what cannot be read.
    """
    _refuse_loose_words(text)
    quantity = _parse_special(text) or _Reader(text, dimension).quantity()
    _check_dimension(quantity, dimension)
    return quantity


def _refuse_loose_words(text: str) -> None:
    lowered = text.strip().lower()
    start = len(text) - len(text.lstrip())
    if not lowered:
        raise ValueFault("there is no value here", 0, todo="write the value, or leave the key out")
    for sign, plain in _VULGAR.items():
        if sign in text:
            raise ValueFault(f"'{sign}' is not read", text.index(sign), 1, f"write {plain}")
    for word, better in _VAGUE.items():
        if lowered.startswith(word):
            raise ValueFault(
                f"'{word}' leaves the end of the limit open", start, len(word), f"write '{better}'"
            )
    for word in _LOOSE:
        if lowered.startswith(word):
            raise ValueFault(
                f"'{word}' gives no tolerance",
                start,
                len(word),
                "write the value and its tolerance",
            )


def _parse_special(text: str) -> Quantity | None:
    plain = text.strip()
    if station := _STATION.fullmatch(plain):
        unit = STATION if len(station[2]) == 2 else KILOMETRE_STATION
        decimals = len(station[3] or ".") - 1
        step = Fraction(1, 10 ** (len(station[2]) + decimals))
        value = Fraction(f"{station[1]}.{station[2]}{(station[3] or '.')[1:]}")
        return Quantity(text, "value", (Amount(value, plain, unit, step),))
    if ratio := _RATIO.fullmatch(plain):
        run = Fraction(ratio[1])
        if run == 0:
            raise ValueFault("a slope of 1:0 is not a slope", 0, len(plain))
        return Quantity(text, "value", (Amount(1 / run, plain, RATIO, Fraction(0), True),))
    if rise := _RISE.fullmatch(plain):
        first = _Reader(rise[1], "length").quantity().amounts[0]
        step = first.step / 12
        amount = Amount(first.value / 12, plain, RATIO, step, first.is_fraction)
        return Quantity(text, "value", (amount,))
    return None


def _check_dimension(quantity: Quantity, dimension: str | None) -> None:
    if dimension is None:
        return
    for amount in quantity.amounts:
        found = amount.unit.dimension
        if found != dimension and found not in _ALSO_ALLOWED.get(dimension, ()):
            raise ValueFault(
                f"'{quantity.text.strip()}' is {_kind(found)}",
                0,
                len(quantity.text),
                f"write {DIMENSIONS[dimension]}",
            )


def _kind(dimension: str) -> str:
    return DIMENSIONS[dimension].split(", such as")[0]


@dataclass(slots=True)
class _Reader:
    """Reads one written value from left to right."""

    text: str
    dimension: str | None
    at: int = 0

    def quantity(self) -> Quantity:
        form = self._limit()
        first = self._amount()
        if form is None:
            form, amounts = self._rest(first)
        else:
            amounts = (self._with_unit(first, None),)
        if not self._done():
            rest = self.text[self.at :].strip()
            raise ValueFault(f"'{rest}' is not understood here", self.at, len(rest))
        return Quantity(self.text, form, amounts)

    def _rest(self, first: Amount) -> tuple[Form, tuple[Amount, ...]]:
        if self._take("to"):
            high = self._amount()
            return "range", (self._with_unit(first, high), self._with_unit(high, first))
        if self._take("±") or self._take("+/-"):
            both = self._amount()
            nominal = self._with_unit(first, both)
            return "tolerance", (nominal, *(self._with_unit(both, nominal),) * 2)
        if self._take("+"):
            return "tolerance", self._one_sided(first)
        if self._take(","):
            return "list", self._listed(first)
        return "value", (self._with_unit(first, None),)

    def _one_sided(self, first: Amount) -> tuple[Amount, ...]:
        plus = self._amount()
        if not (self._take("-") or self._take("−")):
            raise ValueFault(
                "the tolerance has an upper part only",
                self.at,
                1,
                "write both parts, such as +1/16 in -0 in",
            )
        minus = self._amount()
        nominal = self._with_unit(first, plus)
        return nominal, self._with_unit(plus, nominal), self._with_unit(minus, nominal)

    def _listed(self, first: Amount) -> tuple[Amount, ...]:
        found = [first, self._amount()]
        while self._take(","):
            found.append(self._amount())
        last = found[-1]
        return tuple(self._with_unit(amount, last) for amount in found)

    def _limit(self) -> Form | None:
        return next((form for word, form in _LIMITS if self._take(word)), None)

    def _amount(self) -> Amount:
        """A number with the unit behind it, if there is one."""
        self._skip_space()
        start = self.at
        money = self._take("$")
        sign = -1 if not money and self._take("-") else 1
        self._skip_space()
        match = _NUMBER.match(self.text, self.at)
        if match is None:
            rest = self.text[self.at :].strip()
            says = f"a number is missing before '{rest}'" if rest else "a number is missing"
            raise ValueFault(says, min(self.at, len(self.text) - 1), len(rest))
        value, step, is_fraction = self._number(match)
        self.at = match.end()
        written = self.text[start : self.at]
        unit = self._money_unit() if money else self._unit()
        return Amount(sign * value, written, unit, step, is_fraction)

    def _number(self, match: re.Match[str]) -> tuple[Fraction, Fraction, bool]:
        if decimal := match["decimal"]:
            return Fraction(decimal.replace(",", "")), _decimal_step(decimal), False
        top, bottom = match["num"] or match["fnum"], match["den"] or match["fden"]
        if int(bottom) == 0:
            raise ValueFault(
                "a fraction cannot have 0 below the line", match.start(), len(match[0])
            )
        whole = int(match["whole"] or 0)
        return whole + Fraction(int(top), int(bottom)), Fraction(1, int(bottom)), True

    def _unit(self) -> Unit:
        self._skip_space()
        match = _UNIT.match(self.text, self.at)
        written = match[0].strip() if match else ""
        if not written:
            return PLAIN
        unit = find_unit(written) or find_unit(written.rstrip("."))
        if unit is None:
            near = suggest_unit(written)
            todo = f"did you mean '{near}'?" if near else self._expected()
            raise ValueFault(f"'{written}' is not a unit", self.at, len(written), todo)
        self.at += len(match[0].rstrip()) if match else 0
        return unit

    def _money_unit(self) -> Unit:
        self._skip_space()
        match = re.compile(r"(?:/|per\b)\s*(\w+)").match(self.text, self.at)
        if match is None:
            return find_unit("$") or PLAIN
        unit = find_unit(f"$/{match[1]}")
        if unit is None:
            raise ValueFault(
                f"'{match[0]}' is not a pay unit",
                self.at,
                len(match[0]),
                "write $/SY, $/m2 or $/ft",
            )
        self.at = match.end()
        return unit

    def _with_unit(self, amount: Amount, other: Amount | None) -> Amount:
        """The amount with a unit: its own, or that of its neighbour."""
        unit = amount.unit if amount.unit is not PLAIN or other is None else other.unit
        if unit is PLAIN and self.dimension not in (None, "number"):
            raise ValueFault(
                f"'{amount.text.strip()}' has no unit",
                self.text.find(amount.text.strip()),
                len(amount.text.strip()),
                self._expected(),
            )
        if other is not None and other.unit is not PLAIN and other.unit.dimension != unit.dimension:
            raise ValueFault(
                f"'{self.text.strip()}' mixes {_kind(unit.dimension)} and "
                f"{_kind(other.unit.dimension)}",
                0,
                len(self.text),
            )
        return Amount(amount.value, amount.text, unit, amount.step, amount.is_fraction)

    def _expected(self) -> str:
        return f"write {DIMENSIONS[self.dimension]}" if self.dimension else "write a known unit"

    def _take(self, word: str) -> bool:
        self._skip_space()
        if not self.text.startswith(word, self.at):
            return False
        self.at += len(word)
        return True

    def _skip_space(self) -> None:
        while self.text[self.at : self.at + 1].isspace():
            self.at += 1

    def _done(self) -> bool:
        self._skip_space()
        return self.at >= len(self.text)


def _decimal_step(text: str) -> Fraction:
    """One unit in the last written place; trailing zeros of 1,000 and more do not count."""
    digits = text.replace(",", "")
    if "." in digits:
        return Fraction(1, 10 ** (len(digits) - digits.index(".") - 1))
    zeros = len(digits) - len(digits.rstrip("0"))
    return Fraction(10**zeros) if int(digits) >= 1000 else Fraction(1)
