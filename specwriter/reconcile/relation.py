"""Relations: the ties that arithmetic and geometry put between the variables of an area.

A relation is one file under ``relations/<topic>/`` that holds ``RELATION = Relation(...)``.
Its ``shape`` narrows: given intervals, it returns smaller ones that lose no solution.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from fractions import Fraction
from typing import Protocol

from specwriter.model import Area
from specwriter.quantity import Interval

Box = dict[str, Interval]
"""An interval for every variable; one that is absent may take any value from 0 up."""

ANY = Interval(Fraction(0), None)


class Shape(Protocol):
    """The mathematics of a relation."""

    @property
    def variables(self) -> tuple[str, ...]:
        """The variables that the relation ties together."""
        ...

    def narrow(self, box: Mapping[str, Interval], variable: str) -> Interval:
        """All values of ``variable`` that the others' intervals leave open."""
        ...


@dataclass(frozen=True, slots=True)
class Linear:
    """``sum(factor * variable)`` lies in ``span``; exact for each variable in turn."""

    factors: Mapping[str, int]
    span: Interval = Interval(Fraction(0), Fraction(0))  # noqa: RUF009 - frozen

    @property
    def variables(self) -> tuple[str, ...]:
        """The variables of the sum."""
        return tuple(self.factors)

    def narrow(self, box: Mapping[str, Interval], variable: str) -> Interval:
        """What remains for one term when the others take all their values."""
        low, high = self.span.low, self.span.high
        for name, factor in self.factors.items():
            if name == variable:
                continue
            term = box.get(name, ANY)
            least, most = (term.low, term.high) if factor > 0 else (term.high, term.low)
            low = None if low is None or most is None else low - factor * most
            high = None if high is None or least is None else high - factor * least
        own = self.factors[variable]
        ends = (low, high) if own > 0 else (high, low)
        return Interval(*(None if end is None else end / own for end in ends))


@dataclass(frozen=True, slots=True)
class Reciprocal:
    """``count * length = 1``."""

    count: str
    length: str

    @property
    def variables(self) -> tuple[str, ...]:
        """Both variables."""
        return (self.count, self.length)

    def narrow(self, box: Mapping[str, Interval], variable: str) -> Interval:
        """One over the other."""
        other = box.get(self.length if variable == self.count else self.count, ANY)
        low = Fraction(0) if other.high is None else 1 / other.high if other.high > 0 else None
        return Interval(low, 1 / other.low if other.low else None)


def _everywhere(area: Area) -> bool:
    return True


@dataclass(frozen=True, slots=True, kw_only=True)
class Relation:
    """One tie: its statement in words, its shape, its source and where it is valid.

    ``sentence`` puts the clash of three single values into words: ``{groove_width}`` stands for
    what is written on ``groove.width`` and ``{found}`` for what the first variable would have
    to be; without one the report uses general words.
    """

    slug: str
    title: str
    statement: str
    shape: Shape
    source: str
    validity: str = "always"
    sentence: str = ""
    applies: Callable[[Area], bool] = _everywhere

    @property
    def variables(self) -> tuple[str, ...]:
        """The variables that the relation ties together."""
        return self.shape.variables
