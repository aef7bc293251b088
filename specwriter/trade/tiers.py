"""Shares of readings and the limits that they must meet: which can stand beside one another.

Two sets of readings that together make more than the whole share a reading (the rule of inclusion
and exclusion): that reading must meet both limits.
"""

from __future__ import annotations

from fractions import Fraction
from math import ceil, floor
from typing import NamedTuple

from specwriter.quantity import Interval


class Tier(NamedTuple):
    """At least ``share`` of the readings (0 to 1) lie within ``limit``."""

    share: Fraction
    limit: Interval


def exclude(one: Tier, other: Tier) -> bool:
    """True when no set of readings meets both."""
    return one.share + other.share > 1 and one.limit.meet(other.limit).is_empty


def asks_nothing(one: Tier, other: Tier) -> bool:
    """True when each set of readings that meets ``other`` meets ``one``."""
    return one.share <= other.share and other.limit.within(one.limit)


def passing(share: Fraction, readings: int) -> int:
    """How many of the readings must pass, where a share of them must."""
    return ceil(share * readings)


def failing(share: Fraction, readings: int) -> int:
    """How many of the readings may lie somewhere, where at most a share of them may."""
    return floor(share * readings)
