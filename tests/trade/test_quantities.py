"""Areas counted once, lots, removal and coverage at their edges."""

from __future__ import annotations

from fractions import Fraction

import pytest

from specwriter.quantity import Interval
from specwriter.trade import aggregate, coverage, quantities, removal, wear
from specwriter.trade.quantities import Stretch

F = Fraction


def stretch(start: int, end: int, width: int = 24, road: str = "A", lanes: str = "") -> Stretch:
    return Stretch(roadway=road, start=F(start), end=F(end), width=F(width), lanes=frozenset(lanes))


@pytest.mark.parametrize(
    ("stretches", "expected"),
    [
        ([], 0),
        ([stretch(0, 100)], 2400),
        ([stretch(100, 0)], 2400),
        ([stretch(0, 100), stretch(100, 200)], 4800),
        ([stretch(0, 100), stretch(50, 200)], 4800),
        ([stretch(0, 100), stretch(0, 100)], 2400),
        ([stretch(0, 100), stretch(0, 100, road="B")], 4800),
        ([stretch(0, 100, 12, lanes="1"), stretch(0, 100, 12, lanes="2")], 2400),
        ([stretch(0, 100, 24, lanes="12"), stretch(50, 100, 12, lanes="2")], 2400),
        ([stretch(0, 100, 24, lanes="12"), stretch(50, 100, 24, lanes="23")], 3000),
        ([stretch(0, 100, 24, lanes="12"), stretch(50, 150, 12)], 3000),
    ],
)
def test_ground_is_counted_once(stretches: list[Stretch], expected: int) -> None:
    assert quantities.area_once(stretches) == expected
    assert quantities.area_once(reversed(stretches)) == expected


@pytest.mark.parametrize(
    ("lengths", "lot", "expected"), [([1000], 1000, 1), ([1001], 1000, 2), ([500, 500], 1000, 2)]
)
def test_a_lot_ends_with_its_lane(lengths: list[int], lot: int, expected: int) -> None:
    assert quantities.lots(map(F, lengths), F(lot)) == expected
    assert quantities.tests(expected, 10) == 10 * expected


def test_a_lot_of_no_length_is_refused() -> None:
    with pytest.raises(ValueError, match="length"):
        quantities.lots([F(1)], F(0))


@pytest.mark.parametrize(("passes", "strip"), [(3, 2), (4, 0)])
def test_the_strip_left_is_what_the_passes_do_not_reach(passes: int, strip: int) -> None:
    assert coverage.strip_left(F(144), passes, F(48), F(1)) == strip


def test_an_overlap_as_wide_as_the_head_is_refused() -> None:
    with pytest.raises(ValueError, match="overlap"):
        coverage.passes_needed(F(144), F(36), F(36))


def test_a_lane_narrower_than_the_head_takes_one_pass() -> None:
    assert coverage.passes_needed(F(30), F(48), F(1)) == 1


def test_stress_rises_as_the_section_modulus_falls() -> None:
    left, stress = removal.section_modulus_left(F(200), F(6)), removal.stress_ratio(F(200), F(6))

    assert left * stress == 1
    assert stress > 1


def test_the_end_of_life_keeps_an_open_end() -> None:
    loss = wear.LOSS_MM["diamond_grinding"]

    assert wear.end_of_life(Interval(F(1), None), loss) == Interval(F(1, 2), None)
    assert wear.end_of_life(Interval(None, F(2)), loss) == Interval(None, F(8, 5))


def test_shares_of_a_blend_that_do_not_add_up_are_refused() -> None:
    with pytest.raises(ValueError, match="add up"):
        aggregate.blend([(F(1, 2), F(10)), (F(1, 3), F(90))])
