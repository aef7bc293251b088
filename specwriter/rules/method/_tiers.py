"""The tiers of a test, with the limit of its property where this holds for each reading."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from fractions import Fraction
from typing import Any

from specwriter.diagnostic import Evidence
from specwriter.model import Area, results
from specwriter.quantity import Interval, Quantity
from specwriter.rules.rule import evidence
from specwriter.trade.tiers import Tier

_LIMITS = {
    "groove_width": ("groove", "width"),
    "groove_depth": ("groove", "depth"),
    "groove_spacing": ("groove", "spacing"),
    "land_width": ("land", "width"),
    "ridge_height": ("ridge", "height"),
}
"""Tests of one dimension, and where its limit stands below the area."""

_OF_EACH = ("each", "mean_and_each", "minimum", "maximum")
"""Statistics that hold each reading to the limit."""


@dataclass(frozen=True, slots=True)
class Stated:
    """A tier and the places that state it, with its words."""

    tier: Tier
    words: str
    evidence: tuple[Evidence, ...]


_Read = Callable[[Quantity], Interval]


def stated(area: Area, read: _Read) -> Iterator[list[Stated]]:
    """For each test with tiers: its tiers, and the limit that each or a share must meet.

    ``read`` says whether the rounding of the written numbers is granted.
    """
    for key, test in area.testing.items():
        if test.tiers:
            found = [each for tier in test.tiers for each in _of_tier(tier, read)]
            yield [*found, *_of_property(area, key, test, read)]


def _of_tier(tier: results.Tier, read: _Read) -> Iterator[Stated]:
    at = (evidence(tier, "share", "share of the readings"), evidence(tier, "limit", "their limit"))
    made = _tier(tier.share, read(tier.limit))
    if made is not None:
        yield Stated(made, f"{tier.share} of the readings {tier.limit}", at)


def dimension_of(area: Area, key: str) -> tuple[Any, str, Quantity] | None:
    """Noun, key and value of the dimension that a test is of; ``None`` without one."""
    noun, name = _LIMITS.get(key, ("", ""))
    node: Any = getattr(area, noun, None)
    value: Quantity | None = getattr(node, name, None)
    return None if value is None else (node, name, value)


def _of_property(area: Area, key: str, test: results.Test, read: _Read) -> Iterator[Stated]:
    """The limit of the property; a bare value is a target and limits no reading."""
    found = dimension_of(area, key)
    if found is None or found[2].form == "value":
        return
    node, name, value = found
    at = evidence(node, name, key.replace("_", " "))
    if test.statistic in _OF_EACH:
        yield Stated(Tier(Fraction(1), read(value)), f"each reading {value}", (at,))
    elif test.statistic == "share" and test.share is not None:
        made = _tier(test.share, read(value))
        if made is not None:
            words = f"{test.share} of the readings {value}"
            yield Stated(made, words, (evidence(test, "share", "share of the readings"), at))


def _tier(share: Quantity, limit: Interval) -> Tier | None:
    """At most a share on one side of a limit is at least the rest on its other side."""
    if share.form != "at_most":
        low = share.interval.low
        return None if low is None else Tier(low, limit)
    rest = 1 - (share.interval.high or Fraction(0))
    if limit.low is None:
        return Tier(rest, Interval(limit.high, None))
    return Tier(rest, Interval(None, limit.low)) if limit.high is None else None
