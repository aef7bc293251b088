"""Two values that stand for one: how far apart their ends are, with their rounding granted."""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction

from specwriter.quantity import Quantity, show_like

SHARE = Fraction(4, 100)
"""A pair of rounded figures may differ by 25.0 against 25.4 mm, not by 6 against 6.35 mm."""

Test = Callable[[Fraction, Fraction, Fraction], bool]
"""Difference, rounding and size, all in base units: whether the difference counts."""


def ends_apart(left: Quantity, right: Quantity, counts: Test) -> str:
    """In words, the ends of two values that are apart; empty where none is."""
    return " and ".join(
        f"the {name} end is {show_like(one, left)} and {show_like(other, right)}"
        for end, name in enumerate(("low", "high"))
        if (one := getattr(left.interval, name)) is not None
        and (other := getattr(right.interval, name)) is not None
        and counts(
            abs(one - other),
            max(_place(left, end), _place(right, end)),
            max(abs(one), abs(other)),
        )
    )


def _place(value: Quantity, end: int) -> Fraction:
    """Half of the last written place of decimals and metric numbers; the others are exact, and so
    is a tenth of a mile.

    Each end of a range has its own; the rounding of a value and that of its tolerance add up.
    """
    amounts = value.amounts[end : end + 1] if value.form == "range" else value.amounts
    rounded = [
        each.step * each.unit.factor / 2
        for each in amounts
        if each.value
        and (each.unit.system == "si" or "." in each.text)
        and each.unit.symbol != "mi"
    ]
    together = sum(set(rounded[:1])) + sum(set(rounded[1:]))
    return Fraction(together) if value.form == "tolerance" else max(rounded, default=Fraction(0))
