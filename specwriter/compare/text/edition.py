"""By what a text says which edition it is: its date, revision or number near its beginning."""

from __future__ import annotations

import re
from collections.abc import Iterator
from itertools import islice

from specwriter.compare.text.pairs import Added, Part, Removed, TextMatch, is_same
from specwriter.reading.block import paragraphs

_MONTH = r"(?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*\.?"
_NAMES_EDITION = re.compile(
    r"\b(?:revision|rev\.|edition|version|addendum|dated?)\b|\b\d{4}-\d\d-\d\d\b"
    rf"|\b{_MONTH}\s+(?:\d{{1,2}},\s+)?(?:19|20)\d\d\b|\b\d{{1,2}}[./]\d{{1,2}}[./](?:19|20)\d\d\b",
    re.I,
)
_LONGEST = 120
"""A line that names the edition is short; a sentence with a date in it is text."""

_FIRST = 40
"""Paragraphs and tables that are looked at: a title and what may stand before it."""


def same_edition(match: TextMatch) -> str:
    """What both texts call themselves; empty where that differs, or neither says it."""
    kept: list[str] = []
    for part in islice(match.parts, _FIRST):
        named = [" ".join(text.split()) for text in _texts(part) if _names(text)]
        if named and not is_same(part):
            return ""
        kept += named
    return "; ".join(kept)


def _texts(part: Part) -> Iterator[str]:
    block = part.block if isinstance(part, Added | Removed) else part.old
    yield from (each.text for each in paragraphs((block,)))


def _names(text: str) -> bool:
    return len(text) <= _LONGEST and bool(_NAMES_EDITION.search(text))
