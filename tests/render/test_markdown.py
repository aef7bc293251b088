from __future__ import annotations

from dataclasses import replace
from html import unescape

import pytest
from markdown_it import MarkdownIt

from specwriter.render import render_markdown
from specwriter.render.markdown import escaped
from tests.render.sample import SAMPLE

TEXT = render_markdown(SAMPLE)
READER = MarkdownIt("commonmark").enable("table")
HTML = READER.render(TEXT)


@pytest.mark.parametrize(
    "text",
    [
        "1. First",
        "12) Twelfth",
        "- dash",
        "+ plus",
        "---",
        "===",
        "# heading",
        "> quote",
        "*star* _under_ `code` ~~gone~~",
        "a | b",
        "<b>bold</b> &amp; [link](target)",
        "![picture](target)",
        "back\\slash",
        "3.2 mm ± 0.4",
        "-3 mm",
    ],
)
def test_text_comes_back_as_it_was(text: str) -> None:
    assert unescape(READER.render(escaped(text))) == f"<p>{text}</p>\n"


@pytest.mark.parametrize("text", ["3.2 mm", "-0.5 %", "1/8 in", "2.1"])
def test_numbers_are_not_escaped(text: str) -> None:
    assert escaped(text) == text


def test_a_hostile_title_makes_no_markup() -> None:
    html = READER.render(render_markdown(replace(SAMPLE, title="<i>x</i>\n# y")))
    assert "<h1>&lt;i&gt;x&lt;/i&gt; # y</h1>" in html


def test_the_front_sheet_comes_first() -> None:
    assert HTML.index("Front sheet") < HTML.index("<hr") < HTML.index(SAMPLE.title)
    for point in (SAMPLE.status, *SAMPLE.cautions, *SAMPLE.unexpressed):
        assert point in HTML[: HTML.index("<hr")]


def test_headings_carry_the_numbers_of_the_tree() -> None:
    for part in SAMPLE.parts:
        assert f"<h2>{part.number} {part.title}</h2>" in HTML
        for clause in part.clauses:
            assert f"<h3>{clause.number} {clause.title}</h3>" in unescape(HTML)


def test_tables_keep_every_cell() -> None:
    assert HTML.count("<table>") == 2
    assert HTML.count("<td>3.6 | 4</td>") == 5
    assert HTML.count("<th>") == 7


def test_marks_and_blanks_are_read_as_such() -> None:
    assert "<strong>not</strong> exceed <em>depth</em>" in HTML
    assert "<strong>[groove depth, mm]</strong>" in HTML
    assert "(a) Clean the surface" in HTML
    assert "<blockquote>" in HTML
