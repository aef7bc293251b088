"""Drafting against what python-docx takes to write the same paragraphs and tables."""

from __future__ import annotations

from tests.benchmarks.draft import WANTED, measure


def test_drafting_costs_at_most_half_more_than_bare_writing() -> None:
    found = measure()

    assert found.first <= WANTED * found.bare, found
    assert found.again <= WANTED * found.bare, found
