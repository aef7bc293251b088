"""The quick reader of clause bodies, held against Jinja's own syntax tree."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from jinja2 import TemplateSyntaxError

from specwriter.assemble import load_library
from specwriter.assemble.language import condition
from specwriter.assemble.template import Body, Text
from specwriter.assemble.template_jinja import syntax, tree_of
from specwriter.assemble.template_reader import UnusualError, read

CLAUSES = load_library().clauses
BODIES = [
    *(each.body for each in CLAUSES),
    *(condition(each.when) for each in CLAUSES if each.when),
]

PIECES = (
    *("text", "\n", " ", "  ", "'", "{", "}", "%", "#", "é", "\t", "\u00a0"),
    *("{{", "}}", "{%", "%}", "{{ a }}", "{{ a.b | both }}", "{{ ref('a.b') }}", "{# no #}"),
    *("{% if a %}", "{% elif a.b %}", "{% else %}", "{% endif %}", "{% for a in b %}"),
    *("{% for a in b if a.c %}", "{% endfor %}", "{%- if a -%}", "{{- a -}}", "{%+ if a %}"),
    *("{% raw %}", "{% endraw %}"),
)
WORDS = (
    *("a", "b", "a.b", "a.b.c", ".", ",", "(", ")", "[", "]", "|", "==", "!=", "in", "and", "or"),
    *("not", "is", "if", "else", "none", "None", "true", "False", "'x'", '"y z"', r"'\n'"),
    *("both", "limit('at_most')", "and_list", "ref('c')", "table('t')"),
    *("1", "~", "-", "é", "<", "\u00a0"),
)
bodies = st.lists(st.sampled_from(PIECES), max_size=14).map("".join)
expressions = st.lists(st.sampled_from(WORDS), min_size=1, max_size=9).map(" ".join)


def by_jinja(body: str) -> Body | None:
    """What Jinja reads; nothing where it refuses the body, or clauses know no such thing."""
    try:
        return tree_of(syntax(body))
    except (TemplateSyntaxError, TypeError, KeyError, ValueError):
        return None


def agree(body: str) -> bool:
    """Whether the quick reader reads as Jinja does, or leaves the body to it."""
    try:
        found = read(body)
    except UnusualError:
        return True
    return found == by_jinja(body)


@pytest.mark.parametrize("body", BODIES, ids=range(len(BODIES)))
def test_every_clause_is_read_as_jinja_reads_it(body: str) -> None:
    assert read(body) == by_jinja(body)


@settings(max_examples=600, deadline=None)
@given(bodies)
def test_no_mix_of_text_and_tags_is_read_otherwise(body: str) -> None:
    assert agree(body)


@settings(max_examples=600, deadline=None)
@given(expressions)
def test_no_expression_is_read_otherwise(words: str) -> None:
    assert agree("{{ " + words + " }}")
    assert agree(condition(words))
    assert agree("{% for x in " + words + " %}y{% endfor %}")


@settings(max_examples=200, deadline=None)
@given(st.sampled_from(BODIES), st.data())
def test_no_slip_of_the_pen_is_read_otherwise(body: str, data: st.DataObject) -> None:
    at = data.draw(st.integers(0, len(body)))
    to = data.draw(st.integers(at, min(at + 4, len(body))))

    assert agree(body[:at] + data.draw(st.sampled_from(("", *PIECES, *WORDS))) + body[to:])


@pytest.mark.parametrize(
    "body",
    ["{%- if a -%} b {%- endif -%}", "{# a #}", "{{ 1 }}", r"{{ '\'' }}", "{{{ a }}", "\r"],
)
def test_unusual_spelling_is_left_to_jinja(body: str) -> None:
    with pytest.raises(UnusualError):
        read(body)


def test_text_without_braces_is_one_piece() -> None:
    assert read("100 % and { braces }\n") == (Text("100 % and { braces }\n"),)
