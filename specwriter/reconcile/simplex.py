"""Linear sums decided exactly, all at once: the general simplex method over fractions.

Method: Dutertre and de Moura, "A fast linear-arithmetic solver for DPLL(T)", CAV 2006, section 3;
it ends by Bland's rule (1977): of the terms that may move, always the first.
"""

from __future__ import annotations

from collections.abc import Hashable, Mapping
from fractions import Fraction

from specwriter.quantity import Interval

Row = Mapping[Hashable, Fraction]
"""Terms whose sum, each times its factor, is zero whatever the variables are."""

ZERO = Fraction(0)


class Tableau:
    """Bounded variables and bounded sums of them, at one choice of values.

    Some terms (variables or sums) are *basic*: each is a sum of the free ones, which stand at
    an end of their interval or at zero.
    """

    def __init__(
        self,
        ends: Mapping[Hashable, Interval],
        sums: Mapping[Hashable, tuple[Mapping[str, Fraction | int], Interval]],
    ) -> None:
        """``ends`` holds every variable; ``sums`` gives each sum's factors and its interval."""
        self.ends = dict(ends) | {name: span for name, (_, span) in sums.items()}
        self.order = {name: place for place, name in enumerate(self.ends)}
        self.at = {name: _start(each) for name, each in ends.items()}
        self.rows: dict[Hashable, dict[Hashable, Fraction]] = {}
        for name, (factors, _) in sums.items():
            self.rows[name] = {each: Fraction(factor) for each, factor in factors.items() if factor}
            self._place(name)

    def refute(self) -> Row | None:
        """A row that the intervals contradict; ``None`` once ``at`` obeys them all."""
        while True:
            wrong = next((name for name in self._in_order(self.rows) if self._lacks(name)), None)
            if wrong is None:
                return None
            free = self._mover(wrong, self._lacks(wrong))
            if free is None:
                return self._identity(wrong)
            low, high = self.ends[wrong]
            end = low if self._lacks(wrong) > 0 else high
            assert end is not None
            self._shift(free, (end - self.at[wrong]) / self.rows[wrong][free])
            self._pivot(wrong, free)

    def push(self, name: str, side: int) -> Row | None:
        """Move a variable as far up (1) or down (-1) as the sums let it.

        The row that holds it there, with every other term at its end; ``None`` where only its
        own interval or nothing does. ``refute`` comes first.
        """
        while self._room(name, side) != 0:
            free = self._mover(name, side) if name in self.rows else name
            if free is None:
                return self._identity(name)
            up = side if free == name or self.rows[name][free] > 0 else -side
            if not self._slide(free, up):
                return None
        return None

    def _slide(self, free: Hashable, up: int) -> bool:
        """Move a free term until it or a basic one meets its end; False where none does."""
        step, stop = self._room(free, up), free
        for basic in self._in_order(self.rows):
            factor = self.rows[basic].get(free)
            if factor is None:
                continue
            room = self._room(basic, up if factor > 0 else -up)
            if room is not None and (step is None or room / abs(factor) < step):
                step, stop = room / abs(factor), basic
        if step is None:
            return False
        self._shift(free, up * step)
        if stop != free:
            self._pivot(stop, free)
        return True

    def _lacks(self, name: Hashable) -> int:
        """1 below the interval, -1 above it, 0 inside."""
        low, high = self.ends[name]
        if low is not None and self.at[name] < low:
            return 1
        return -1 if high is not None and self.at[name] > high else 0

    def _room(self, name: Hashable, side: int) -> Fraction | None:
        """How far a term may still move; ``None`` without an end."""
        end = self.ends[name].high if side > 0 else self.ends[name].low
        return None if end is None else (end - self.at[name]) * side

    def _mover(self, basic: Hashable, side: int) -> Hashable | None:
        """The first free term that can move a basic one."""
        row = self.rows[basic]
        return next(
            (
                name
                for name in self._in_order(row)
                if self._room(name, side if row[name] > 0 else -side) != 0
            ),
            None,
        )

    def _shift(self, free: Hashable, by: Fraction) -> None:
        self.at[free] += by
        for basic, row in self.rows.items():
            if free in row:
                self.at[basic] += row[free] * by

    def _pivot(self, basic: Hashable, free: Hashable) -> None:
        """Exchange the two: solve the row of the basic term for the free one."""
        row = self.rows.pop(basic)
        factor = row.pop(free)
        solved = {name: -each / factor for name, each in row.items()} | {basic: 1 / factor}
        for other in self.rows.values():
            if free in other:
                _add(other, solved, other.pop(free))
        self.rows[free] = solved

    def _place(self, name: Hashable) -> None:
        """Write a new row in terms of the free ones, and work out its value."""
        row = self.rows[name]
        for basic in [each for each in row if each in self.rows]:
            _add(row, self.rows[basic], row.pop(basic))
        self.at[name] = sum((each * self.at[free] for free, each in row.items()), ZERO)

    def _identity(self, basic: Hashable) -> Row:
        return {basic: Fraction(-1)} | self.rows[basic]

    def _in_order(self, names: Mapping[Hashable, object]) -> list[Hashable]:
        return sorted(names, key=self.order.__getitem__)


def _start(interval: Interval) -> Fraction:
    low, high = interval
    return low if low is not None else high if high is not None else ZERO


def _add(row: dict[Hashable, Fraction], more: Mapping[Hashable, Fraction], times: Fraction) -> None:
    for name, factor in more.items():
        total = row.get(name, ZERO) + factor * times
        if total:
            row[name] = total
        else:
            row.pop(name, None)
