"""How computed figures are printed: in the governing unit of the job, the other one beside it."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from specwriter.model import Job
from specwriter.quantity import Interval
from specwriter.quantity.printing import decimal_text

_INCH = Fraction("0.0254")
_FOOT = Fraction("0.3048")
_YARD = Fraction("0.9144")
_POUND = Fraction("0.45359237")
_MILE = Fraction("1609.344")


@dataclass(frozen=True, slots=True)
class Unit:
    """A unit of a figure: one of it is ``factor`` base units; printed to ``places`` decimals."""

    symbol: str
    factor: Fraction
    places: int

    def text(self, span: Interval) -> str:
        """The span in this unit, without saying which end is open."""
        ends = [end / self.factor for end in (span.low, span.high) if end is not None]
        places = max((self._decimals(end) for end in ends), default=0)
        numbers = dict.fromkeys(decimal_text(end, Fraction(1, 10**places)) for end in ends)
        return f"{' to '.join(numbers) or 'any'} {self.symbol}".rstrip()

    def _decimals(self, number: Fraction) -> int:
        """Decimals of a number that are not idle zeros: both ends of a range print alike."""
        _, _, decimals = decimal_text(number, Fraction(1, 10**self.places), trim=True).partition(
            "."
        )
        return len(decimals)


@dataclass(frozen=True, slots=True)
class Scale:
    """The unit of each system; a figure that has only one is printed once."""

    us: Unit
    si: Unit

    def governing(self, job: Job) -> Unit:
        """The unit that governs in the job."""
        return self.si if job.project.governing_units == "si" else self.us

    def text(self, span: Interval, job: Job) -> str:
        """The span as the job prints values: ``0.215 in (5.46 mm)``."""
        first = self.governing(job)
        other = self.us if first is self.si else self.si
        text = f"{_bound(span)}{first.text(span)}"
        if other == first or not job.project.dual_units:
            return text
        return f"{text} ({other.text(span)})"


def _bound(span: Interval) -> str:
    if span.low is None:
        return "" if span.high is None else "at most "
    return "at least " if span.high is None else ""


def _alone(symbol: str, factor: Fraction | int, places: int) -> Scale:
    unit = Unit(symbol, Fraction(factor), places)
    return Scale(unit, unit)


CUT = Scale(Unit("in", _INCH, 3), Unit("mm", Fraction(1, 1000), 2))
"""Dimensions of grooves, lands and blades."""

TEXTURE = Scale(Unit("in", _INCH, 4), Unit("mm", Fraction(1, 1000), 2))
DEPTH = Scale(Unit("in", _INCH, 2), Unit("mm", Fraction(1, 1000), 1))
"""What is left of slabs, covers and layers."""

WIDTH = Scale(Unit("ft", _FOOT, 2), Unit("m", Fraction(1), 2))
COUNT = Scale(Unit("per ft", 1 / _FOOT, 1), Unit("per m", Fraction(1), 1))
AREA = Scale(Unit("SY", _YARD**2, 0), Unit("m2", Fraction(1), 0))
VOLUME = Scale(Unit("CY", _YARD**3, 1), Unit("m3", Fraction(1), 1))
DEPTH_OF_SOLIDS = Scale(
    Unit("ft3 per SY", _FOOT**3 / _YARD**2, 3), Unit("L per m2", Fraction(1, 1000), 2)
)
MASS = Scale(Unit("ton", 2000 * _POUND, 1), Unit("t", Fraction(1000), 1))
MASS_PER_AREA = Scale(Unit("lb per SY", _POUND / _YARD**2, 1), Unit("kg per m2", Fraction(1), 1))
ROUGHNESS = Scale(Unit("in/mi", _INCH / _MILE, 1), Unit("m/km", Fraction(1, 1000), 2))
SPEED = Scale(
    Unit("mph", _MILE / 3600, 0),
    Unit("km/h", Fraction(1000, 3600), 0),
)
PERCENT = _alone("percent", Fraction(1, 100), 1)
SHARE = _alone("", 1, 3)
NUMBER = _alone("", 1, 0)
DECIBEL = _alone("dB(A)", 1, 1)
HERTZ = _alone("Hz", 1, 0)
DEGREES = _alone("degrees", 1, 0)
SKID = _alone("", 1, 0)
INDEX = _alone("", 1, 2)
RAIN = Scale(Unit("in/h", _INCH / 3600, 1), Unit("mm/h", Fraction(1, 3_600_000), 0))
