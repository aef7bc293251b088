"""A value as a specification writes it: exact, and aware of how it was written."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from functools import cached_property
from typing import Literal

from specwriter.quantity.interval import Interval
from specwriter.quantity.unit import Unit

Form = Literal["value", "range", "tolerance", "at_least", "at_most", "list"]

_INCH_SLACK = Fraction("0.005") * Fraction("0.0254")
_SI_SLACK = Fraction("0.25") / 1000
_LONG = ("m", "km", "ft", "yd")
"""Units of what is taped and not gauged: their decimals are rounded as they are written."""


@dataclass(frozen=True)
class Amount:
    """One number with its unit, as written; ``step`` is one unit in its last written place."""

    value: Fraction
    text: str
    unit: Unit
    step: Fraction
    is_fraction: bool = False

    @cached_property
    def base(self) -> Fraction:
        """The amount in the base unit of its dimension (metres, seconds, ...)."""
        return self.unit.to_base(self.value)

    @cached_property
    def slack(self) -> Fraction:
        """How far the exact value behind the written one may lie, in base units.

        Half the last written place for decimals and counts, never more than 0.005 in or
        0.25 mm for a length in other units than metres or feet; nothing for fractions and for
        whole numbers of inches, feet, yards or miles, which writers take to be exact (common
        practice, no source).
        """
        half = self.step * self.unit.factor / 2
        if self.unit.dimension != "length":
            return half if self.unit.dimension in ("per_length", "roughness") else Fraction(0)
        if self.unit.symbol in _LONG and "." in self.text:
            return half
        if self.unit.system == "us":
            whole = self.is_fraction or "." not in self.text
            return Fraction(0) if whole else min(half, _INCH_SLACK)
        return min(half, _SI_SLACK)


@dataclass(frozen=True)
class Quantity:
    """A written value: one number, a range, a tolerance, a one-sided limit or a list.

    ``amounts`` holds (value), (low, high), (nominal, plus, minus), (limit) or the listed
    values in the order written. ``text`` is what stands in the job, letter by letter.
    """

    text: str
    form: Form
    amounts: tuple[Amount, ...]

    def __str__(self) -> str:
        return self.text

    @property
    def unit(self) -> Unit:
        """The unit of the first number."""
        return self.amounts[0].unit

    @property
    def dimension(self) -> str:
        """What kind of quantity this is: a key of ``unit.DIMENSIONS``."""
        return self.unit.dimension

    @property
    def nominal(self) -> Fraction | None:
        """The single or nominal value in base units, where there is one."""
        return self.amounts[0].base if self.form in ("value", "tolerance") else None

    @cached_property
    def interval(self) -> Interval:
        """All values it allows, in base units, exactly as written."""
        first = self.amounts[0].base
        match self.form:
            case "at_least":
                return Interval(first, None)
            case "at_most":
                return Interval(None, first)
            case "tolerance":
                plus, minus = (a.value * a.unit.factor for a in self.amounts[1:])
                return Interval(first - minus, first + plus)
            case _:
                values = [amount.base for amount in self.amounts]
                return Interval(min(values), max(values))

    @cached_property
    def reading(self) -> Interval:
        """What it allows once the rounding of the written numbers is granted (see ``slack``)."""
        return self.interval.widen(max(amount.slack for amount in self.amounts))
