"""Words and numbers inside sentences."""

from __future__ import annotations

import pytest

from specwriter.compare.wording import numbers_in, word_changes


@pytest.mark.parametrize(
    ("old", "new", "words", "warning"),
    [
        ("do not saw", "do saw", '"not" is gone', 'A duty may turn on "not".'),
        ("it should dry", "it shall dry", '"should" became "shall"', 'on "shall", "should".'),
        ("stop the saw", "stop the machine", '"saw" became "machine"', ""),
        ("stop", "stop, then report", '", then report" is new', ""),
        ("a b c d e f g h", "not one two three four five six seven", "", 'turn on "not".'),
    ],
)
def test_changed_words_are_told_and_duties_pointed_out(
    old: str, new: str, words: str, warning: str
) -> None:
    found_words, found_warning = word_changes(old, new)

    assert found_words == words
    assert found_warning.endswith(warning)
    assert bool(found_warning) == bool(warning)


@pytest.mark.parametrize(
    ("text", "frame", "values"),
    [
        ("each 1,000 ft of lane", "each # of lane", ["1,000 ft"]),
        ("10 new readings", "# new readings", ["10"]),
        ("depth gauge read to 1/64 in", "depth gauge read to #", ["1/64 in"]),
        ("25 ft before and 50 m after", "# before and # after", ["25 ft", "50 m"]),
        ("2 in each lot", "# in each lot", ["2"]),
        ("lots of 5, then 6", "lots of #, then #", ["5", "6"]),
        ("1/0 in", "1/0 in", []),
        ("ASTM E965", "ASTM E965", []),
        ("every tenth joint", "every # joint", ["10"]),
        ("the tenth joint", "the tenth joint", []),
    ],
)
def test_values_are_found_in_a_sentence(text: str, frame: str, values: list[str]) -> None:
    found = numbers_in(text)

    assert found.frame == frame
    assert [value.text for value in found.values] == values
