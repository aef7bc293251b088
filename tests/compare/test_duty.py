"""Words on which a duty turns."""

from __future__ import annotations

import pytest

from specwriter.compare import Sense
from specwriter.compare.duty import modal_sense, remedy_sense


@pytest.mark.parametrize(
    ("old", "new", "sense", "bears"),
    [
        ("the surface should be clean", "the surface shall be clean", Sense.TIGHTER, "contractor"),
        ("the surface shall be clean", "the surface should be clean", Sense.LOOSER, "agency"),
        ("the Engineer may test again", "the Engineer will test again", Sense.TIGHTER, "agency"),
        ("the Agency will test", "the Agency may test", Sense.LOOSER, "contractor"),
    ],
)
def test_a_modal_verb_says_which_way_a_duty_went(
    old: str, new: str, sense: Sense, bears: str
) -> None:
    answer = modal_sense(old, new)

    assert answer is not None
    assert (answer[0], answer[1].bears) == (sense, bears)


@pytest.mark.parametrize(
    ("old", "new"),
    [
        ("the surface shall be clean", "the surface must be clean"),
        ("the surface shall be clean", "the surface shall be dry"),
        ("it may crack and shall hold", "it shall crack and may hold"),
    ],
)
def test_words_that_do_not_turn_one_way_give_no_sense(old: str, new: str) -> None:
    assert modal_sense(old, new) is None


@pytest.mark.parametrize(
    ("milder", "harsher"),
    [
        ("none", "deduct 2 percent of the price"),
        ("deduct 2 percent of the price", "grind again"),
        ("deduct 2 percent of the price", "remove and replace the slab"),
        ("saw the same grooves once more", "replace the slab"),
    ],
)
def test_remedies_have_an_order_of_harshness(milder: str, harsher: str) -> None:
    there, back = remedy_sense(milder, harsher), remedy_sense(harsher, milder)

    assert there is not None
    assert back is not None
    assert (there[0], back[0]) == (Sense.TIGHTER, Sense.LOOSER)


@pytest.mark.parametrize(
    ("old", "new"),
    [("grind again", "saw again"), ("do not saw again", "none"), ("as the plans say", "none")],
)
def test_remedies_of_one_kind_or_of_an_unknown_one_have_no_order(old: str, new: str) -> None:
    assert remedy_sense(old, new) is None
