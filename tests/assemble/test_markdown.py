"""Markdown of clause bodies: the blocks it makes and what is refused at its line."""

from __future__ import annotations

import pytest

from specwriter.assemble.document import ListItem, Note, Paragraph, Run
from specwriter.assemble.markdown import MarkdownError, blocks_of
from specwriter.assemble.page import CLOSING, OPENING
from tests.assemble import shown, texts
from tests.support import job


def test_lines_of_a_paragraph_are_joined_and_emphasis_is_kept() -> None:
    (paragraph,) = blocks_of("One **strong** and\n*soft* word.\n")

    assert isinstance(paragraph, Paragraph)
    assert paragraph.runs == (
        Run(text="One "),
        Run(text="strong", kind="strong"),
        Run(text=" and "),
        Run(text="soft", kind="emphasis"),
        Run(text=" word."),
    )


def test_lists_have_two_levels_and_begin_again() -> None:
    made = blocks_of("1. one\n   1. inner\n   1. next\n1. two\n\nText.\n\n1. three\n")

    items = [(b.level, b.starts) for b in made if isinstance(b, ListItem)]
    assert items == [
        (0, True),
        (1, True),
        (1, False),
        (0, False),
        (0, True),
    ]


def test_a_block_quote_is_a_note() -> None:
    (note,) = blocks_of("> Take care.\n> Always.\n")

    assert isinstance(note, Note)
    assert shown(note.runs) == "Take care. Always."


def test_a_table_has_its_caption_above() -> None:
    lines = texts(
        job("diamond_grinding"), "Table: sizes | Sizes\n| A | B |\n|---|---|\n| 1 | *2* |"
    )

    assert lines == ["Table 1 Sizes: A | B", "1 | <emphasis:2>"]


@pytest.mark.parametrize(
    ("body", "says", "line"),
    [
        ("Text.\n\n# Title\n", "a heading", 3),
        ("Title\n---\n", "a heading", 1),
        ("- one\n", "bulleted list", 1),
        ("Text.\n\n    code\n", "four spaces", 3),
        ("```\ncode\n```\n", "block of code", 1),
        ("a `b` c\n", "between backquotes", 1),
        ("Text\n\n![x](y.png)\n", "a picture", 3),
        ("[x](y)\n", "a link", 1),
        ("Text\n\n***\n", "a line across", 3),
        ("one  \ntwo\n", "forced line break", 1),
        ("1. a\n   1. b\n      1. c\n", "two levels", 3),
        ("1. a\n\n   more\n", "one paragraph", 3),
        ("1. > a\n", "begins with its text", 1),
        ("> 1. a\n", "a note holds paragraphs", 1),
        ("| A |\n|---|\n| 1 |\n", "no caption", 1),
        ("Table: a | A\n\nText.\n", "caption without a table", 3),
        ("Table: a | A\n", "caption without a table", 1),
    ],
)
def test_what_clauses_do_not_use_is_refused_at_its_line(body: str, says: str, line: int) -> None:
    with pytest.raises(MarkdownError, match=says) as caught:
        blocks_of(body)

    assert caught.value.line == line


def test_html_stays_text() -> None:
    (paragraph,) = blocks_of("<b>x</b> & y\n")

    assert shown(paragraph.runs) == "<b>x</b> & y"  # type: ignore[union-attr]


def test_marks_take_the_emphasis_around_them_except_blanks() -> None:
    marked = ((Run(text="a"),), (Run(text="[b]", kind="blank"),))
    (paragraph,) = blocks_of(f"**{OPENING}0{CLOSING} {OPENING}1{CLOSING}**", marked)

    assert shown(paragraph.runs) == "<strong:a ><blank:[b]>"  # type: ignore[union-attr]
