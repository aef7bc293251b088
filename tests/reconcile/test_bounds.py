"""Bounds that feed on themselves, worked by hand."""

from __future__ import annotations

from fractions import Fraction

from specwriter.quantity import Interval
from specwriter.reconcile.propagate import bounded, propagate
from specwriter.reconcile.relation import ANY, Linear, Relation

SPACING, LAND = "groove.spacing", "land.width"


def tie(factors: dict[str, int], low: int | None, high: int | None) -> Relation:
    span = Interval(*(None if end is None else Fraction(end) for end in (low, high)))
    return Relation(
        slug="tie", title="tie", statement="tie", shape=Linear(factors, span), why="", source=""
    )


def test_a_bound_that_feeds_on_itself_is_found() -> None:
    # s <= 1 + l and l <= s / 100, so s <= 1 + s / 100, which is s <= 100 / 99.
    ties = [tie({SPACING: 1, LAND: -1}, None, 1), tie({LAND: 100, SPACING: -1}, None, 0)]
    start = {SPACING: ANY, LAND: ANY}

    before, after = propagate(start, ties), bounded(propagate(start, ties), ties)

    assert before is not None
    assert before[SPACING].high is None
    assert after is not None
    high = after[SPACING].high
    assert high is not None
    assert Fraction(100, 99) <= high < Fraction(100, 99) + Fraction(1, 10**4)


def test_ranges_that_run_away_are_empty() -> None:
    # l >= 2 s and s >= l + 1 would need s >= 2 s + 1, which no length is.
    ties = [tie({LAND: 1, SPACING: -2}, 0, None), tie({SPACING: 1, LAND: -1}, 1, None)]

    assert propagate({SPACING: ANY, LAND: ANY}, ties) is None
