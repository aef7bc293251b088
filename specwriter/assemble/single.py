"""A list of one item is no list: the item is said in the sentence that leads it in."""

from __future__ import annotations

import re
from collections.abc import Iterator

from specwriter.assemble.duty import duty_at
from specwriter.assemble.once import ITEM
from specwriter.assemble.page import MARK

_AREAS = re.compile(rf"On (?:{MARK.pattern}(?:, | and |(?=:)))+:")
"""A lead that only names areas; its item is the rest of the sentence."""

_ARTICLES = ("The", "A", "An", "Each", "No")


def without_single_items(text: str) -> str:
    """The Markdown of a clause in which no lead has a list of one item behind it."""
    return "\n".join(_lines(text.split("\n")))


def _lines(source: list[str]) -> Iterator[str]:
    at = 0
    while at < len(source):
        place = _single_item(source, at)
        if place is None:
            yield source[at]
            at += 1
        else:
            yield _sentence(source[at], source[place])
            at = place + 1


def _single_item(source: list[str], at: int) -> int | None:
    """Where the one item of the list stands that the line leads in; none for any other line."""
    if not source[at].endswith(":") or ITEM.match(source[at]):
        return None
    filled = (i for i in range(at + 1, len(source)) if source[i].strip())
    first, second = next(filled, None), next(filled, None)
    if first is None or not ITEM.match(source[first]):
        return None
    more = second is not None and (ITEM.match(source[second]) or second == first + 1)
    return None if more else first


def _sentence(lead: str, item: str) -> str:
    said = ITEM.sub("", item, count=1)
    if not _AREAS.fullmatch(lead):
        return f"{lead} {said}"
    if said.split(" ", 1)[0] in _ARTICLES or duty_at(said) == 0:
        said = said[0].lower() + said[1:]
        return f"{lead[:-1]}, {said}"
    return f"{lead} {said}"
