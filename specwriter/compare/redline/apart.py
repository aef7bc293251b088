"""Lists that start anew in a shared pattern → a pattern each.

An office program notes on the first item of a list that it starts anew (found by trial,
LibreOffice 7.4): when that item goes with a rejected change, the list counts on from the one
before. With a pattern of its own a list begins at its start whatever becomes of its items.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence

from specwriter.reading.xml import whole

Uses = Sequence[tuple[str, int]]
"""The list and the level of each numbered paragraph of a document, in order."""

_NUM = re.compile(r'<w:num\b[^>]* ?w:numId="(\d+)"[^>]*>(.*?)</w:num>', re.DOTALL)
_ABSTRACT = re.compile(
    r'<w:abstractNum\b[^>]* ?w:abstractNumId="(-?\d+)".*?</w:abstractNum>', re.DOTALL
)
_POINTS_TO = re.compile(r'<w:abstractNumId w:val="(-?\d+)"/>')
_START = re.compile(
    r'<w:lvlOverride w:ilvl="(\d)">\s*<w:startOverride w:val="(\d+)"/>\s*</w:lvlOverride>'
)
_OWN = re.compile(r"<w:(?:nsid|tmpl|pStyle|styleLink|numStyleLink)\b[^>]*/>")


def with_patterns_apart(numbering: str, documents: Iterable[Uses]) -> str:
    """The part numbering.xml; no number of ``documents`` becomes another by it."""
    nums = {found[1]: found[0] for found in _NUM.finditer(numbering)}
    patterns = {found[1]: found[0] for found in _ABSTRACT.finditer(numbering)}
    shared = {num: found[1] for num, text in nums.items() if (found := _POINTS_TO.search(text))}
    mixed = {each for uses in documents for each in _mixed(uses, shared, nums)}
    free = 1 + max((whole(each, 0) for each in patterns), default=0)
    copies = []
    for num, text in nums.items():
        pattern = shared.get(num, "")
        if pattern in mixed or pattern not in patterns or not _START.search(text):
            continue
        copies.append(_copy(patterns[pattern], str(free), dict(_START.findall(text))))
        own = _POINTS_TO.sub(f'<w:abstractNumId w:val="{free}"/>', _START.sub("", text))
        numbering = numbering.replace(text, own)
        free += 1
    at = numbering.find("<w:num ")
    return numbering[:at] + "".join(copies) + numbering[at:] if copies else numbering


def _mixed(uses: Uses, shared: dict[str, str], nums: dict[str, str]) -> set[str]:
    """The patterns in which one list counts on from another, or is taken up again."""
    found: set[str] = set()
    last: dict[str, str] = {}
    begun: set[str] = set()
    for num, level in uses:
        pattern = shared.get(num, "")
        if last.get(pattern) != num:
            starts_anew = str(level) in dict(_START.findall(nums.get(num, "")))
            if num in begun or (pattern in last and not starts_anew):
                found.add(pattern)
            begun.add(num)
            last[pattern] = num
    return found


def _copy(pattern: str, id: str, starts: dict[str, str]) -> str:
    named = re.sub(r'w:abstractNumId="[^"]*"', f'w:abstractNumId="{id}"', pattern, count=1)
    for level, start in starts.items():
        first = rf'(<w:lvl\b[^>]*w:ilvl="{level}"[^>]*>\s*<w:start w:val=")\d+'
        named = re.sub(first, rf"\g<1>{start}", named)
    return _OWN.sub("", named)
