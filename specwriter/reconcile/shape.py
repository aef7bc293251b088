"""The mathematics of a relation: given intervals, smaller ones that lose no solution."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, field, replace
from fractions import Fraction
from itertools import product
from typing import Any, Literal, Protocol

from specwriter.quantity import Interval

Box = dict[str, Interval]
"""An interval for every variable; one that is absent may take any value from 0 up."""

ANY = Interval(Fraction(0), None)
ZERO = Interval(Fraction(0), Fraction(0))
NOTHING = Interval(Fraction(1), Fraction(0))
"""No value at all."""


class Shape(Protocol):
    """What the engine needs to know of a relation."""

    @property
    def variables(self) -> tuple[str, ...]:
        """The variables that the relation ties together."""
        ...

    @property
    def always_fitting(self) -> tuple[str, ...]:
        """Variables for which there is a value whatever the others are."""
        ...

    @property
    def only_computed(self) -> tuple[str, ...]:
        """Outputs from which nothing leads back to the inputs: they are never chosen."""
        ...

    def narrow(self, box: Mapping[str, Interval], variable: str) -> Interval:
        """All values of ``variable`` that the others' intervals leave open, or more."""
        ...

    def floating(self) -> Shape:
        """The same with its own numbers in floating point."""
        ...


@dataclass(frozen=True, slots=True)
class Linear:
    """``sum(factor * variable)`` lies in ``span``; exact for each variable in turn."""

    factors: Mapping[str, int | Fraction]
    span: Interval = ZERO

    @property
    def variables(self) -> tuple[str, ...]:
        """The variables of the sum."""
        return tuple(self.factors)

    @property
    def always_fitting(self) -> tuple[str, ...]:
        """Variables that can make up for whatever the others come to."""
        plus = tuple(name for name, factor in self.factors.items() if factor > 0)
        minus = tuple(name for name, factor in self.factors.items() if factor < 0)
        if self.span == ZERO:
            return (plus if len(plus) == 1 else ()) + (minus if len(minus) == 1 else ())
        if self.span.high is None:
            return plus
        return minus if self.span.low is None else ()

    @property
    def only_computed(self) -> tuple[str, ...]:
        """None."""
        return ()

    def narrow(self, box: Mapping[str, Interval], variable: str) -> Interval:
        """What remains for one term when the others take all their values."""
        low, high = self.span
        for name, factor in self.factors.items():
            if name == variable:
                continue
            least, most = box.get(name, ANY)
            if factor < 0:
                least, most = most, least
            # Most factors are one: exact arithmetic is saved a product.
            if low is not None:
                low = None if most is None else low - (most if factor == 1 else factor * most)
            if high is not None:
                high = None if least is None else high - (least if factor == 1 else factor * least)
            if low is None and high is None:
                break
        own = self.factors[variable]
        ends = (low, high) if own > 0 else (high, low)
        return Interval(*(None if end is None else end / own for end in ends))

    def floating(self) -> Linear:
        """The same sum with factors and span in floating point."""
        factors = {name: float(factor) for name, factor in self.factors.items()}
        return Linear(factors, in_floats(self.span))  # type: ignore[arg-type]


@dataclass(frozen=True, slots=True)
class Reciprocal:
    """``count * length = 1``."""

    count: str
    length: str

    @property
    def variables(self) -> tuple[str, ...]:
        """Both variables."""
        return (self.count, self.length)

    @property
    def always_fitting(self) -> tuple[str, ...]:
        """Both variables."""
        return self.variables

    @property
    def only_computed(self) -> tuple[str, ...]:
        """None."""
        return ()

    def narrow(self, box: Mapping[str, Interval], variable: str) -> Interval:
        """One over the other."""
        other = box.get(self.length if variable == self.count else self.count, ANY)
        if other.is_point and not other.low:
            return NOTHING
        low = Fraction(0) if other.high is None else 1 / other.high if other.high > 0 else None
        return Interval(low, 1 / other.low if other.low else None)

    def floating(self) -> Reciprocal:
        """The same: it has no number of its own."""
        return self


Values = Mapping[str, Any]
Signs = Mapping[str, int | None]
Inverse = Callable[[Any, Values], Any]


@dataclass(frozen=True, slots=True, kw_only=True)
class Function:
    """``output = value(inputs)``, which rises or falls in each input while the others stay.

    ``value`` takes a mapping of names to numbers and uses plain arithmetic (so that it can be
    given symbols too). ``signs`` says for a box in which inputs it rises (1) or falls (-1); 0
    where that depends on the others: its extremes still lie at ends; ``None`` where it does
    neither: the engine then halves the box. ``inverses[name](output, others)`` gives the input
    that yields an output, ``None`` where there is none. ``scatter`` is the share by which the
    output may lie off the value, to both sides. With ``bound`` "at_most" the value is the most
    that the output can be, with "at_least" the least.
    """

    output: str
    inputs: tuple[str, ...]
    value: Callable[[Values], Any]
    signs: Callable[[Mapping[str, Interval]], Signs]
    inverses: Mapping[str, Inverse] = field(default_factory=dict)
    scatter: Fraction = Fraction(0)
    bound: Literal["equal", "at_most", "at_least"] = "equal"

    @property
    def variables(self) -> tuple[str, ...]:
        """The output, then the inputs."""
        return (self.output, *self.inputs)

    @property
    def always_fitting(self) -> tuple[str, ...]:
        """The output."""
        return (self.output,)

    @property
    def only_computed(self) -> tuple[str, ...]:
        """The output, where no input can be found from it."""
        return () if self.inverses else (self.output,)

    def narrow(self, box: Mapping[str, Interval], variable: str) -> Interval:
        """The range of the output, or of one input for the outputs that are left."""
        inputs = {name: box.get(name, ANY) for name in self.inputs}
        signs = self.signs(inputs)
        if variable == self.output:
            least = None if self.bound == "at_most" else self._end(inputs, signs, -1)
            most = None if self.bound == "at_least" else self._end(inputs, signs, 1)
            if least is None and most is None and self._divides_by_nothing(inputs):
                return NOTHING
            return Interval(least, most)
        if not signs[variable] or variable not in self.inverses:
            return ANY
        output = box.get(self.output, ANY)
        least = None if self.bound == "at_least" else output.low
        most = None if self.bound == "at_most" else output.high
        others = {name: each for name, each in inputs.items() if name != variable}
        rising = signs[variable] == 1
        return Interval(
            self._input(variable, least if rising else most, others, signs, rising, min),
            self._input(variable, most if rising else least, others, signs, not rising, max),
        )

    def floating(self) -> Function:
        """The same with its scatter in floating point."""
        return replace(self, scatter=float(self.scatter))  # type: ignore[arg-type]

    def _divides_by_nothing(self, inputs: Mapping[str, Interval]) -> bool:
        """True for a point at which there is no value: a pattern of grooves without a spacing."""
        point = {name: each.low for name, each in inputs.items() if each.is_point}
        if len(point) < len(inputs):
            return False
        try:
            self.value(point)
        except ZeroDivisionError:
            return True
        except (KeyError, OverflowError, ValueError):
            return False
        return False

    def _end(self, inputs: Mapping[str, Interval], signs: Signs, direction: int) -> Fraction | None:
        """The greatest (1) or least (-1) output; ``None`` where it has no bound."""
        pick = max if direction > 0 else min
        found = _pick(pick, self.value, _corners(inputs, signs, direction))
        if found is None or not self.scatter:
            return found
        return found + direction * abs(found) * self.scatter

    def _input(
        self,
        variable: str,
        output: Fraction | None,
        others: Mapping[str, Interval],
        signs: Signs,
        raises: bool,
        pick: Pick,
    ) -> Fraction | None:
        """The end of an input at which the others, at their best, just give ``output``."""
        if output is None:
            return None
        direction = 1 if raises else -1
        granted = output / (1 + direction * self.scatter) if self.scatter else output
        inverse = self.inverses[variable]
        corners = _corners(others, signs, direction)
        return _pick(pick, lambda corner: inverse(granted, corner), corners)


@dataclass(frozen=True, slots=True)
class Between:
    """One output between two functions of the same inputs: ``least`` and ``most``."""

    least: Function
    most: Function

    @property
    def variables(self) -> tuple[str, ...]:
        """The output, then the inputs."""
        return self.most.variables

    @property
    def always_fitting(self) -> tuple[str, ...]:
        """None: the band may be empty of what else is asked."""
        return ()

    @property
    def only_computed(self) -> tuple[str, ...]:
        """None: an output may lie anywhere in the band."""
        return ()

    def narrow(self, box: Mapping[str, Interval], variable: str) -> Interval:
        """What both bounds leave."""
        return self.least.narrow(box, variable).meet(self.most.narrow(box, variable))

    def floating(self) -> Between:
        """Both bounds in floating point."""
        return Between(self.least.floating(), self.most.floating())


def in_floats(interval: Interval) -> Interval:
    """The interval with its ends in floating point."""
    low, high = interval
    return Interval(
        None if low is None else float(low),  # type: ignore[arg-type]
        None if high is None else float(high),  # type: ignore[arg-type]
    )


def is_settled(interval: Interval) -> bool:
    """True for a point, or in floating point for what rounding has made of one."""
    low, high = interval
    if low is None or high is None:
        return False
    return low == high or (isinstance(low, float) and high - low <= 1e-10 * abs(high) + 1e-13)


Pick = Callable[[list[Fraction]], Fraction]


def _corners(
    inputs: Mapping[str, Interval], signs: Signs, direction: int
) -> list[dict[str, Fraction]]:
    """The corners among which the greatest (1) or least (-1) output lies; none if unbounded."""
    sure: dict[str, Fraction] = {}
    open_: list[str] = []
    for name, (low, high) in inputs.items():
        sign = signs[name]
        if low is not None and low == high:
            sure[name] = low
        elif sign:
            end = high if sign * direction > 0 else low
            if end is not None:
                sure[name] = end
        elif sign is None and not is_settled(inputs[name]):
            return []
        else:
            open_.append(name)
    if not open_:
        return [sure]
    corners = product(*(inputs[name] for name in open_))
    return [sure | _finite(zip(open_, corner, strict=True)) for corner in corners]


def _finite(ends: Iterable[tuple[str, Fraction | None]]) -> dict[str, Fraction]:
    return {name: end for name, end in ends if end is not None}


def _pick(
    pick: Pick, compute: Callable[[Values], Any], corners: list[dict[str, Fraction]]
) -> Fraction | None:
    """The loosest of the computed numbers; ``None`` where one of them has no answer."""
    found: list[Fraction] = []
    rough = bool(corners) and any(isinstance(each, float) for each in corners[0].values())
    for corner in corners:
        try:
            number = compute(corner)
        except (KeyError, ZeroDivisionError, OverflowError, ValueError):
            return None
        if number is None:
            return None
        found.append(number if rough or isinstance(number, Fraction) else Fraction(number))
    return pick(found) if found else None
