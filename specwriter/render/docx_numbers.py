"""The counting pattern of Word that gives the numbers of the tree."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from specwriter.assemble.document import Document

Counted = tuple[tuple[int, ...], str]
"""How often each level has been counted, and the number that the tree prints."""


def level_texts(document: Document) -> tuple[str, str]:
    """What Word prints before a part and before a clause, such as ``%1.`` and ``%1.%2``.

    Raises ``ValueError`` when no pattern gives every number of the tree.
    """
    parts: list[Counted] = []
    clauses: list[Counted] = []
    for count, part in enumerate(document.parts, start=1):
        parts.append(((count,), f"{part.number}."))
        own = enumerate(part.clauses, start=1)
        clauses += [((count, place), clause.number) for place, clause in own]
    return _pattern(parts, "%1."), _pattern(clauses, "%1.%2")


def _pattern(numbers: Sequence[Counted], usual: str) -> str:
    if all(_counted(usual, counts) == number for counts, number in numbers):
        return usual
    counts, first = numbers[0]
    for pattern in sorted(_readings(first, counts), key=_levels, reverse=True):
        if all(_counted(pattern, counts) == number for counts, number in numbers):
            return pattern
    raise ValueError(f"a Word file cannot count the numbers that begin with '{first}'")


def _readings(text: str, counts: tuple[int, ...]) -> Iterator[str]:
    """Every pattern that may stand behind a number, levels before literal digits."""
    if not text:
        yield ""
        return
    for level, count in enumerate(counts, start=1):
        if text.startswith(str(count)):
            yield from (f"%{level}{rest}" for rest in _readings(text[len(str(count)) :], counts))
    yield from (text[0] + rest for rest in _readings(text[1:], counts))


def _levels(pattern: str) -> int:
    return len(set(re.findall(r"%\d", pattern)))


def _counted(pattern: str, counts: tuple[int, ...]) -> str:
    return re.sub(r"%(\d)", lambda found: str(counts[int(found[1]) - 1]), pattern)
