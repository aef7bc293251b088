"""Countings of the old document in the new one, so that numbers are right either way."""

from __future__ import annotations

import re
from collections.abc import Iterator
from xml.etree.ElementTree import Element

from specwriter.compare.redline.apart import with_patterns_apart
from specwriter.compare.text import Match, MatchedTable, Part, Rewritten
from specwriter.reading import Paragraph, Text
from specwriter.reading.block import paragraphs
from specwriter.reading.counting import Counting
from specwriter.reading.xml import Namer, W, parse, whole

NUMBERING = "word/numbering.xml"
_NUM_ID = re.compile(r'(<w:numId w:val=")(\d+)(")')
_OWN = re.compile(r'<w:(?:nsid|tmpl|pStyle)\b[^>]*/>| w:abstractNumId="[^"]*"| w1\d:[^=]*="[^"]*"')


class Lists:
    """Which list of the old document is which of the new one.

    A list takes part in one list of the other document only: what fits no longer is removed here
    and added there, for an item that changed its list cannot be rejected back into its own.
    """

    def __init__(self, old: dict[str, bytes], new: dict[str, bytes]) -> None:
        self._namer = Namer()
        self._old, self._new = (_nums(parts, self._namer) for parts in (old, new))
        self._abstracts = _abstracts(new, self._namer)
        self._old_abstracts = _abstracts(old, self._namer)
        self._counting = Counting(_root(new))
        self._map: dict[str, str] = {}
        self._taken: set[str] = set()
        self._next = 1 + max((whole(each, 0) for each in self._new), default=0)
        self._nums: list[str] = []
        self._copies: list[str] = []

    def learn(self, parts: Iterator[Part]) -> None:
        """Remembers the lists of all paragraphs that stand in both documents."""
        for part in _pairs(parts):
            if part.old.list and part.new.list:
                was, now = part.old.list[0], part.new.list[0]
                if was not in self._map and now not in self._taken:
                    self._map[was] = now
                    self._taken.add(now)

    def shown(self, paragraph: Paragraph, *, is_old: bool = False) -> str:
        """The number of the next paragraph of the redline, removed and added ones counted alike."""
        if paragraph.list is None:
            return ""
        num, level = paragraph.list
        return self._counting.next(self._map.get(num, "") if is_old else num, level)

    def fit(self, old: Paragraph, new: Paragraph) -> bool:
        """Whether a paragraph counts in the same list before and after."""
        if old.list is None or new.list is None:
            return old.list is new.list
        return self._map.get(old.list[0]) == new.list[0] and old.list[1] == new.list[1]

    def old_properties(self, properties: str) -> str:
        """The properties of an old paragraph, counting in a list of the new document."""
        return _NUM_ID.sub(lambda found: found[1] + self._mapped(found[2]) + found[3], properties)

    def _mapped(self, num: str) -> str:
        if num == "0" or num not in self._old:
            return num
        if num not in self._map:
            self._map[num] = str(self._next)
            self._next += 1
            self._nums.append(self._copy(num, self._map[num]))
        return self._map[num]

    def _copy(self, num: str, to: str) -> str:
        abstract, rest = self._old[num]
        inner = f'<w:abstractNumId w:val="{self._abstract(abstract)}"/>{rest}'
        return f'<w:num w:numId="{to}">{inner}</w:num>'

    def _abstract(self, id: str) -> str:
        """The same counting pattern of the new document, or a copy of the old one.

        A pattern that one list alone uses stays its own: nothing else makes that list start anew.
        """
        text = self._old_abstracts.get(id, "")
        is_shared = sum(abstract == id for abstract, _ in self._old.values()) > 1
        for known, other in self._abstracts.items():
            if is_shared and _OWN.sub("", other) == _OWN.sub("", text):
                return known
        copy = str(1 + max((whole(each, 0) for each in self._abstracts), default=-1))
        self._abstracts[copy] = text
        named = re.sub(r'w:abstractNumId="[^"]*"', f'w:abstractNumId="{copy}"', text, count=1)
        self._copies.append(re.sub(r"<w:(?:nsid|tmpl|pStyle)\b[^>]*/>", "", named))
        return copy

    def part(self, content: bytes, old: Text, new: Text) -> bytes:
        """The part numbering.xml with what the old lists need, each list apart from the others."""
        was = [(self._mapped(num), level) for num, level in _uses(old)]
        text = with_patterns_apart(self._with_old_lists(content.decode("utf-8")), (was, _uses(new)))
        return text.encode("utf-8")

    def _with_old_lists(self, text: str) -> str:
        if not self._nums:
            return text
        first = re.search(r"<w:num\s", text)
        at = first.start() if first else text.rindex("</w:numbering>")
        text = text[:at] + "".join(self._copies) + text[at:]
        end = text.rindex("</w:num>") + len("</w:num>") if first else text.rindex("</w:numbering>")
        return text[:end] + "".join(self._nums) + text[end:]


def _uses(text: Text) -> list[tuple[str, int]]:
    return [each.list for each in paragraphs(text.blocks) if each.list]


def _pairs(parts: Iterator[Part]) -> Iterator[Match | Rewritten]:
    for part in parts:
        if isinstance(part, Match | Rewritten):
            yield part
        elif isinstance(part, MatchedTable):
            for row in part.rows:
                for cell in row.cells:
                    yield from _pairs(iter(cell))


def _root(parts: dict[str, bytes]) -> Element | None:
    return parse(parts[NUMBERING], NUMBERING) if NUMBERING in parts else None


def _nums(parts: dict[str, bytes], namer: Namer) -> dict[str, tuple[str, str]]:
    """Number of a list → its pattern, and the rest of its element as text."""
    root = _root(parts)
    found = {}
    for num in () if root is None else root.findall(f"{W}num"):
        abstract = num.find(f"{W}abstractNumId")
        if abstract is not None:
            rest = "".join(namer.text(each) for each in num if each is not abstract)
            found[num.get(f"{W}numId", "")] = abstract.get(f"{W}val", ""), rest
    return found


def _abstracts(parts: dict[str, bytes], namer: Namer) -> dict[str, str]:
    root = _root(parts)
    each = () if root is None else root.findall(f"{W}abstractNum")
    return {e.get(f"{W}abstractNumId", ""): namer.text(e) for e in each}
