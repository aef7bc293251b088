"""What a clause body may say, and what is refused before it is compiled."""

from __future__ import annotations

import pytest

from specwriter.assemble.subset import LENGTH_CAP, check

ALLOWED = [
    "Plain text with 100 % and { braces }.",
    "{{ project.title }}",
    "{{ project.base_section.number }}",
    "{% for area in areas %}{{ area.groove.width | both }}{% endfor %}",
    "{% for area in areas if area.smoothness %}{% if not loop.last %}, {% endif %}{% endfor %}",
    "{% for limit in areas.limits %}{{ limit.from }} to {{ limit.to }}{% endfor %}",
    "{% if conditions.curbs and not conditions.live_traffic or residue %}x{% endif %}",
    "{% if residue.regime == 'haul' %}x{% elif residue.regime in ['spread'] %}y{% endif %}",
    "{{ areas.groove.width | both | and_list }}",
    "{{ sequence | and_list }}",
    "{{ residue.ph | limit('at_most') }}",
    "{{ ref('common.one') }} {{ table('limits') }}",
    "{% for area in areas %}{{ area.pay_item.name }}{% endfor %}",
    "{% for area in areas %}{{ area.testing.groove_depth.lot }}{% endfor %}",
    "{{ limits_table }}",
]

REFUSED = [
    ("{{ 'a' * 10**9 }}", "not in the language"),
    ("{{ 1 + 1 }}", "not in the language"),
    ("{{ 'a' ~ 'b' }}", "not in the language"),
    ("{% for i in range(99999) %}x{% endfor %}", "goes over a list"),
    ("{{ range(9) }}", "only ref and table"),
    ("{{ project.__class__ }}", "has no '__class__'"),
    ("{{ project.title.upper() }}", "only ref and table"),
    ("{{ project['title'] }}", "not in the language"),
    ("{{ areas[0].name }}", "not in the language"),
    ("{{ project | attr('title') }}", "no filter 'attr'"),
    ("{{ project.title | upper }}", "no filter 'upper'"),
    ("{{ project.title | default('x') }}", "no filter 'default'"),
    ("{{ residue.ph | limit('about') }}", "cannot take this"),
    ("{{ residue.ph | both(1) }}", "cannot take this"),
    ("{{ lipsum() }}", "only ref and table"),
    ("{{ ref() }}", "only ref and table"),
    ("{{ ref('a', 'b') }}", "only ref and table"),
    ("{{ ref(project.title) }}", "only ref and table"),
    ("{{ self }}", "'self' is not known"),
    ("{{ _page }}", "'_page' is not known"),
    ("{{ pavement }}", "'pavement' is not known"),
    ("{{ conditions.curb }}", "no 'curb'"),
    ("{{ conditions.posted_speed.value }}", "nothing can be read"),
    ("{{ conditions }}", "whole group of values"),
    ("{{ areas }}", "list cannot be printed"),
    ("{{ areas.groove.width }}", "list cannot be printed"),
    ("{{ project.title | and_list }}", "joins a list"),
    ("{{ conditions.curbs }}", "yes-or-no"),
    ("{% if conditions.posted_speed > 3 %}x{% endif %}", "no arithmetic"),
    ("{% if conditions.curbs is defined %}x{% endif %}", "not in the language"),
    ("{{ 'a' if conditions.curbs else 'b' }}", "not in the language"),
    ("{% set x = 1 %}", "'assign' is not used"),
    ("{% macro m() %}{% endmacro %}", "'macro' is not used"),
    ("{% include 'x' %}", "'include' is not used"),
    ("{% import 'x' as y %}", "'import' is not used"),
    ("{% extends 'x' %}", "'extends' is not used"),
    ("{% filter upper %}x{% endfilter %}", "'filterblock' is not used"),
    ("{% for a, b in areas %}{% endfor %}", "names one thing"),
    ("{% for a in areas recursive %}{% endfor %}", "names one thing"),
    ("{% for a in project.title %}{% endfor %}", "goes over a list"),
    ("{% for a in areas | and_list %}{% endfor %}", "goes over a list"),
    ("{% if conditions.curbs %}", "never closed"),
    ("{{ project.title", "braces cannot be read"),
    ("x" * (LENGTH_CAP + 1), "more than 20,000 characters"),
]


@pytest.mark.parametrize("body", ALLOWED)
def test_the_language_of_clauses_is_accepted(body: str) -> None:
    assert check(body).complaints == []


@pytest.mark.parametrize(("body", "says"), REFUSED, ids=[body[:40] for body, _ in REFUSED])
def test_everything_else_is_refused(body: str, says: str) -> None:
    found = [complaint.says for complaint in check(body).complaints]

    assert any(says in text for text in found), found


def test_a_complaint_names_its_line_and_all_are_reported() -> None:
    found = check("one\n{{ conditions.curb }}\n\n{{ pavement }}\n").complaints

    assert [c.line for c in found] == [2, 4]
    assert found[0].todo == "did you mean 'curbs'?"


def test_references_are_collected() -> None:
    checked = check("{{ ref('a.b') }}\n{{ table('t') }}")

    assert (checked.clauses, checked.tables) == ([(1, "a.b")], [(2, "t")])
