"""Usual Markdown is read as markdown-it reads it; what is unusual is left to that."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st

from specwriter.assemble import assemble, load_library, provision
from specwriter.assemble.markdown import blocks_of, parser
from specwriter.assemble.markdown_tokens import usual_tokens
from tests.support import EXAMPLES, job

WORDS = ("Cut", "1.", "2.", "*", "*wet*", "a_b", "_", "#", ">", "-", "+", "|", "\\", "`", "<b>")
WORDS += (
    "&amp;",
    "[x]",
    "3.2",
    "—",
    "\ue0003\ue001",
    "***",
    "(a)",
    "~~~",
    "=",
    "don't",
    "1/8",
    ":",
)
GAPS = (" ", " ", " ", " ", "\n", "\n", "\n\n", "\n\n", "\n   ", "\n1. ", "\n\n1. ", "\n   1. ")
GAPS += ("  ", "\t", "\n    ", "", "\n- ")
PLAIN = ("Cut", "wet", "*wet*", "1/8", "a_b", "\ue0003\ue001", "Table: a_b | dry", "(a)", "it's")
BREAKS = (" ", " ", " ", "\n", "\n\n", "\n1. ", "\n\n1. ", "\n   1. ")
PIECES = st.one_of(
    *[st.tuples(st.sampled_from(BREAKS), st.sampled_from(PLAIN))] * 8,
    st.tuples(st.sampled_from(GAPS), st.sampled_from(WORDS)),
)
TEXTS = st.lists(PIECES, max_size=8)


def told(tokens: Sequence[Any]) -> list[object]:
    """Everything that the reader of blocks looks at."""
    found: list[object] = []
    for token in tokens:
        line = token.map[0] if token.map and token.type in ("paragraph_open", "inline") else None
        inside = [(child.type, child.content) for child in token.children or ()]
        children = [each for each in inside if each != ("text", "")]
        found.append((token.type, token.content if token.type == "inline" else "", line, children))
    return found


@settings(max_examples=500, deadline=None)
@given(TEXTS)
@example([("", "*wet*"), ("\n", "1."), (" ", "Cut")])
def test_it_is_read_as_the_other_reader_does(pieces: list[tuple[str, str]]) -> None:
    text = "".join(f"{gap}{word}" for gap, word in pieces).strip(" ")

    found = usual_tokens(text)

    assert found is None or told(found) == told(parser().parse(text))


@pytest.mark.parametrize("name", sorted(path.name for path in EXAMPLES.iterdir()))
def test_every_clause_of_an_example_is_usual(name: str, monkeypatch: pytest.MonkeyPatch) -> None:
    """So no draft imports the other reader; and both read every clause alike."""
    seen: list[str] = []
    monkeypatch.setattr(
        provision, "blocks_of", lambda text, marked: seen.append(text) or blocks_of(text, marked)
    )

    assemble(job(name), load_library())

    assert seen
    for text in seen:
        found = usual_tokens(text)
        assert found is not None, text
        assert told(found) == told(parser().parse(text))


@pytest.mark.parametrize(
    "text",
    ["# Head", "- item", "a\n---", "> note", "| a |\n| - |", "a *b", "`c`", "1. a\nb", "    code"],
)
def test_what_is_unusual_is_left_alone(text: str) -> None:
    assert usual_tokens(text) is None
