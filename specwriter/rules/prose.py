"""Small helps for sentences."""

from __future__ import annotations

from collections.abc import Sequence


def listed(names: Sequence[str]) -> str:
    """Names as a list in a sentence: ``lot, remedy and retest``; at least one."""
    *first, last = names
    return f"{', '.join(first)} and {last}" if first else last
