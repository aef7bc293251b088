"""What is pointed out of two texts alone."""

from __future__ import annotations

import pytest

from specwriter.compare.text import compare_texts
from specwriter.compare.text.cautions import cautions
from specwriter.compare.text.changes import text_changes
from specwriter.compare.text.edition import same_edition
from specwriter.reading import read_plain


@pytest.mark.parametrize(
    ("old", "new", "said"),
    [
        ("at most 60 in/mi", "at most 60 m/km", "its unit went from in/mi to m/km"),
        ("with a 0.2 in blanking band", "with a 0.1 in blanking band", "The blanking band changed"),
        ("blanking band of 0.2 in", "blanking band of 0 in", "The blanking band changed"),
        ("by ASTM E965-15 (2019)", "by ASTM E965-15 (2023)", "from 15 (2019) to 15 (2023)"),
        ("by ASTM E965-15", "by ASTM E965", "from 15 to none"),
        ("by ISO 13473-1:1997", "by ISO 13473-1:2019", "The edition of ISO 13473-1 went from 1997"),
        ("Paid under item 4.", "Incidental to item 4.", 'Payment may turn on "incidental"'),
        ("No separate payment is made.", "Paid by the day.", "which is gone"),
        ("", "Residue is incidental.", 'Payment may turn on "incidental"'),
    ],
)
def test_what_is_easily_overlooked_is_said(old: str, new: str, said: str) -> None:
    assert any(said in each for each in cautions(old, new))


@pytest.mark.parametrize(
    ("old", "new"),
    [
        ("at most 60 in/mi", "at most 70 in/mi"),
        ("by ASTM E965-15", "by ASTM E965-15, in each lot"),
        ("a band 2 ft wide", "a band 3 ft wide"),
        ("5/8 in", "15.9 mm"),
    ],
)
def test_nothing_is_said_where_nothing_is_hidden(old: str, new: str) -> None:
    assert not list(cautions(old, new))


@pytest.mark.parametrize(
    ("title", "other", "named"),
    [
        ("SP-7, Revision B", "SP-7, Revision B", "SP-7, Revision B"),
        ("SP-7, Revision B", "SP-7, Revision C", ""),
        ("Issued March 1, 2027", "Issued March 1, 2027", "Issued March 1, 2027"),
        ("Grooving", "Grooving", ""),
    ],
)
def test_a_text_is_known_by_its_revision_and_date(title: str, other: str, named: str) -> None:
    texts = (
        read_plain(f"# {each}\n\n## 1 Cut\n\nThe depth is {depth} in.\n", markdown=True)
        for each, depth in ((title, "1/8"), (other, "3/16"))
    )

    assert same_edition(compare_texts(*texts)) == named


def test_a_number_typed_before_a_heading_follows_and_a_count_does_not() -> None:
    old = "## 2 Cut\n\nTake 2 readings; see Section 3.\n\n## 3 Pay\n\nBy the yard.\n"
    new = "## 3 Cut\n\nTake 3 readings; see Section 4.\n\n## 4 Pay\n\nBy the yard.\n"

    changes = text_changes(compare_texts(*(read_plain(t, markdown=True) for t in (old, new))))

    assert [(each.place, each.follows) for each in changes] == [
        ("the heading", True),
        ("paragraph 1", False),
        ("the heading", True),
    ]
