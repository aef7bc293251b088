"""Texture lost in service: by geometry from the wear of the lands, and as published.

Lengths in one unit, except where millimetres are named.
"""

from __future__ import annotations

from fractions import Fraction

from specwriter.quantity import Interval
from specwriter.trade.formula import Formula

LAND_WEAR = Formula(
    text="loss = groove width × wear of the land / spacing",
    source="geometry",
    validity="lands that wear down while the bottoms of the grooves stay",
)

PUBLISHED_LOSS = Formula(
    text="texture depth at end of life = initial - loss; loss 0.4 to 0.5 mm ground, 0.05 to 0.08 "
    "mm grooved",
    source="NCHRP Report 634, page 92, 2009",
    validity="the pavements of that study, in service and without studded tyres",
)

_GROUND = Interval(Fraction(4, 10), Fraction(5, 10))
_GROOVED = Interval(Fraction(5, 100), Fraction(8, 100))
LOSS_MM: dict[str, Interval] = {
    "diamond_grinding": _GROUND,
    "longitudinal_grooving": _GROOVED,
}
"""Texture → published loss of mean texture depth in mm; other textures were not reported."""


def texture_lost(width: Fraction, spacing: Fraction, wear: Fraction) -> Fraction:
    """Mean texture depth lost when the lands wear by ``wear``: ``LAND_WEAR``."""
    return width * wear / spacing


def wear_implied(loss: Fraction, kerf: Fraction) -> Fraction:
    """Wear of the lands behind a loss of texture; ``kerf`` is width over spacing."""
    return loss / kerf


def end_of_life(initial: Interval, loss: Interval) -> Interval:
    """What is left of an initial texture depth: ``PUBLISHED_LOSS``."""
    low = None if initial.low is None or loss.high is None else initial.low - loss.high
    high = None if initial.high is None or loss.low is None else initial.high - loss.low
    return Interval(low, high)
