"""What several rules ask of a trial section: the words that name it."""

from __future__ import annotations

NAMED = r"\btrial\b|\b(?:test|control) (?:strip|section)"
"""A trial section by any of its names."""
