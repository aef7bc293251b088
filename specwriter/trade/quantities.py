"""Areas from stations and widths, each once; lots and tests; lengths in metres, areas in m².

Two stretches share ground where they lie on one roadway, their stations overlap and their lanes
do; lanes that are not named are taken to be the same (the pay rule is: each area once).
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from fractions import Fraction
from itertools import pairwise
from math import ceil

from specwriter.trade.formula import Formula, identity

AREA = identity("area = (to - from) × width")
ONCE = identity("area along the stations, each place and lane once")

LOTS = Formula(
    text="lots = length of lane / lot, each stretch and lane begun anew, rounded up",
    source="arithmetic",
    validity="lots that end with the stretch",
)

JOINED = Formula(
    text="lots = (length of lane - remainder that joins the lot before) / lot, each stretch and "
    "lane begun anew, rounded up, at least one",
    source="arithmetic; Iowa DOT Standard Specifications, section 2428, October 2015: a bridge of "
    "less than 778 ft, that is 528 + 250 ft, is one segment",
    validity="lots that end with the stretch",
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Stretch:
    """A strip along a roadway; ``lanes`` holds the numbers of its lanes, empty if not named."""

    roadway: str
    start: Fraction
    end: Fraction
    width: Fraction
    lanes: frozenset[str] = frozenset()

    @property
    def length(self) -> Fraction:
        """Length along the stations, however they are written."""
        return abs(self.end - self.start)

    @property
    def area(self) -> Fraction:
        """Length times width: ``AREA``."""
        return self.length * self.width

    def spans(self, low: Fraction, high: Fraction) -> bool:
        """True where it covers the stations from ``low`` to ``high``."""
        return min(self.start, self.end) <= low and high <= max(self.start, self.end)


def area_once(stretches: Iterable[Stretch]) -> Fraction:
    """Area that stretches cover together: ``ONCE``."""
    by_roadway: dict[str, list[Stretch]] = {}
    for stretch in stretches:
        by_roadway.setdefault(stretch.roadway, []).append(stretch)
    return sum((_along(each) for each in by_roadway.values()), Fraction(0))


def _along(stretches: Sequence[Stretch]) -> Fraction:
    ends = sorted({end for each in stretches for end in (each.start, each.end)})
    slices = (
        (high - low) * _width([each for each in stretches if each.spans(low, high)])
        for low, high in pairwise(ends)
    )
    return sum(slices, Fraction(0))


def _width(stretches: Sequence[Stretch]) -> Fraction:
    """Width of the ground that stretches at one place share: every lane at its widest."""
    lanes: dict[str, Fraction] = {}
    for each in stretches:
        for lane in each.lanes:
            lanes[lane] = max(lanes.get(lane, Fraction(0)), each.width / len(each.lanes))
    unnamed = max((each.width for each in stretches if not each.lanes), default=Fraction(0))
    return max(sum(lanes.values(), Fraction(0)), unnamed)


def lots(lengths: Iterable[Fraction], lot: Fraction, joined: Fraction = Fraction(0)) -> int:
    """Number of lots in lanes of these lengths: ``LOTS``.

    A remainder up to ``joined`` belongs to the lot before it: ``JOINED``. ``ValueError`` for a lot
    of nothing.
    """
    if lot <= 0:
        raise ValueError("a lot has a length")
    return sum(max(1, ceil((length - joined) / lot)) for length in lengths if length > 0)


def tests(lots: int, readings: int) -> int:
    """Number of readings when each lot has so many."""
    return lots * readings
