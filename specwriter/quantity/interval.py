"""Closed intervals of exact numbers, with infinite ends."""

from __future__ import annotations

from fractions import Fraction
from typing import NamedTuple


class Interval(NamedTuple):
    """All numbers from ``low`` to ``high``, both included; ``None`` is an infinite end."""

    low: Fraction | None = None
    high: Fraction | None = None

    @property
    def is_empty(self) -> bool:
        """True when no number lies inside."""
        return self.low is not None and self.high is not None and self.low > self.high

    @property
    def is_point(self) -> bool:
        """True when exactly one number lies inside."""
        return self.low is not None and self.low == self.high

    def __contains__(self, value: object) -> bool:
        if not isinstance(value, Fraction):
            return False
        return (self.low is None or self.low <= value) and (self.high is None or value <= self.high)

    def meet(self, other: Interval) -> Interval:
        """The numbers that lie in both; may be empty."""
        low, high = self.low, self.high
        if low is None or (other.low is not None and other.low > low):
            low = other.low
        if high is None or (other.high is not None and other.high < high):
            high = other.high
        return Interval(low, high)

    def within(self, other: Interval) -> bool:
        """True when every number of this interval lies in ``other``."""
        low_ok = other.low is None or (self.low is not None and self.low >= other.low)
        high_ok = other.high is None or (self.high is not None and self.high <= other.high)
        return low_ok and high_ok

    def widen(self, slack: Fraction) -> Interval:
        """The same interval with each finite end moved outwards by ``slack``."""
        return Interval(
            None if self.low is None else self.low - slack,
            None if self.high is None else self.high + slack,
        )
