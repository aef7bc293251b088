"""The grammar of written values: text in, ``Quantity`` out, or an error at its column.

::

    value     = number unit                       1/8 in   1-1/2 in   0.095 in   60 in/mi
    range     = number [unit] "to" number unit    1/8 to 1/4 in   0.090 in to 0.130 in
    tolerance = number [unit] "±" number unit     3/16 in ± 1/16 in   (also "+/-")
              | number [unit] "+" number [unit] "-" number [unit]      1/4 in +1/16 in -0 in
    limit     = "at least" value | "at most" value                    (also "≥" and "≤")
    list      = value "," value { "," value }
    number    = whole | decimal | fraction | whole "-" fraction | whole fraction
    station   = digits "+" digits                 120+00 (feet)   1+200 (kilometres)
    ratio     = "1:" number                       1:48
    money     = "$" number [ "/" unit ]           $4.50/SY

A unit is written in any of its spellings (in, inch, inches, ", in., -inch); a number without
one takes the unit of the others. Typographic signs and spaces count as their plain forms.
"""

from __future__ import annotations

from specwriter.quantity.fault import ValueFault
from specwriter.quantity.habits import advise
from specwriter.quantity.lookalike import fold
from specwriter.quantity.quantity import Quantity
from specwriter.quantity.reader import Reader
from specwriter.quantity.unit import DIMENSIONS

_ALSO_ALLOWED = {"slope": ("percent",)}
_NEVER_BELOW_ZERO = {
    "length", "roughness", "area", "volume", "mass", "speed", "pressure", "time", "rain",
    "per_length", "station", "sound",
}  # fmt: skip


def parse(text: str, dimension: str | None = None) -> Quantity:
    """Read one written value; ``dimension`` is a key of ``DIMENSIONS``, or ``None`` for any.

    Raises ``ValueFault`` with the column of what cannot be read.
    """
    plain = fold(text)
    try:
        return _read(text, plain, dimension)
    except ValueFault as fault:
        raise advise(plain, fault, lambda other: _fault_of(other, dimension)) from None


def _read(text: str, plain: str, dimension: str | None) -> Quantity:
    reader = Reader(plain, dimension)
    form, amounts = reader.read()
    quantity = Quantity(text, form, amounts)
    _check_dimension(quantity, reader)
    _check_sign(quantity, reader)
    return quantity


def _fault_of(text: str, dimension: str | None) -> ValueFault | None:
    try:
        _read(text, text, dimension)
    except ValueFault as fault:
        return fault
    return None


def _check_dimension(quantity: Quantity, reader: Reader) -> None:
    """Refuses another kind of quantity than the one wanted, and two kinds in one value."""
    text = reader.text.strip()
    first, wanted = quantity.dimension, reader.dimension
    for amount, piece in zip(quantity.amounts, reader.pieces, strict=True):
        found = amount.unit.dimension
        if found != first:
            says = f"'{text}' mixes {_kind(first)} and {_kind(found)}"
            raise ValueFault(says, piece.start, piece.end - piece.start, reader.expected())
    if wanted not in (None, first) and first not in _ALSO_ALLOWED.get(wanted, ()):
        at = reader.text.index(text)
        raise ValueFault(f"'{text}' is {_kind(first)}", at, len(text), reader.expected())


def _kind(dimension: str) -> str:
    return DIMENSIONS[dimension].split(", such as")[0]


def _check_sign(quantity: Quantity, reader: Reader) -> None:
    """Refuses what lies below zero where nothing can."""
    if quantity.dimension not in _NEVER_BELOW_ZERO:
        return
    pieces = reader.pieces
    for amount, piece in zip(quantity.amounts, pieces, strict=True):
        if amount.value < 0:
            says = f"'{reader.text[piece.start : piece.end]}' is below zero"
            todo = "write it without the minus sign"
            raise ValueFault(says, piece.start, piece.end - piece.start, todo)
    if quantity.form == "tolerance" and (quantity.interval.low or 0) < 0:
        nominal, minus = pieces[0].amount.text, pieces[2]
        says = f"a tolerance of {minus.amount.text} reaches below zero from {nominal}"
        todo = "write a smaller tolerance, or a range that begins at 0"
        raise ValueFault(says, minus.start, minus.end - minus.start, todo)
