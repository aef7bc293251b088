"""Tiers of acceptance against every set of four readings; the tiers that documents print."""

from __future__ import annotations

from fractions import Fraction
from itertools import product

from hypothesis import given, settings
from hypothesis import strategies as st

from specwriter.quantity import Interval
from specwriter.trade.tiers import Tier, asks_nothing, exclude, passing

READINGS = 4
VALUES = tuple(Fraction(value) for value in range(5))
LOTS = tuple(product(VALUES, repeat=READINGS))
ENDS = st.none() | st.sampled_from(VALUES)
LIMITS = st.builds(Interval, ENDS, ENDS).filter(lambda each: not each.is_empty)
SHARES = st.integers(1, READINGS).map(lambda count: Fraction(count, READINGS))
TIERS = st.builds(Tier, SHARES, LIMITS)


def meets(lot: tuple[Fraction, ...], tier: Tier) -> bool:
    return sum(value in tier.limit for value in lot) >= tier.share * READINGS


@given(TIERS, TIERS)
@settings(max_examples=200, deadline=None)
def test_tiers_exclude_one_another_when_no_lot_meets_both(one: Tier, other: Tier) -> None:
    assert exclude(one, other) is not any(meets(lot, one) and meets(lot, other) for lot in LOTS)


@given(TIERS, TIERS)
@settings(max_examples=200, deadline=None)
def test_a_tier_that_asks_nothing_is_met_by_each_lot_of_the_other(one: Tier, other: Tier) -> None:
    if asks_nothing(one, other):
        assert all(meets(lot, one) for lot in LOTS if meets(lot, other))


def _inches(text: str) -> Fraction:
    return Fraction(text) * Fraction("0.0254")


AIRFIELD_ITEM = (
    Tier(Fraction("0.9"), Interval(_inches("3/16"), None)),
    Tier(Fraction("0.6"), Interval(_inches("1/4"), None)),
    Tier(Fraction("0.9"), Interval(None, _inches("5/16"))),
)
"""FAA AC 150/5370-10H, item P-621, 2018, from memory; not more than 10 percent above 5/16 in."""

OF_EACH = Tier(Fraction(1), Interval(_inches("3/16"), _inches("5/16")))
"""UFC 3-260-02, chapter 21, 2001: 1/16 in to either side of 1/4 in."""


def test_the_tiers_of_the_airfield_item_stand_beside_one_another() -> None:
    for one, other in product(AIRFIELD_ITEM, repeat=2):
        assert not exclude(one, other)
        assert asks_nothing(one, other) is (one is other)


def test_a_tolerance_of_each_groove_leaves_one_of_them_something_to_ask() -> None:
    # FAA AC 150/5320-12C, 1997, from memory, has that one beside the tolerance.
    assert [asks_nothing(tier, OF_EACH) for tier in AIRFIELD_ITEM] == [True, False, True]


def test_a_share_of_readings_is_a_whole_number_of_them() -> None:
    counts = [passing(Fraction("0.9"), readings) for readings in (5, 9, 10, 15, 20)]
    assert counts == [5, 9, 9, 14, 18]
