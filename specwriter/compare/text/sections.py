"""A document cut at its headings, and which section is which in another version."""

from __future__ import annotations

import re
from collections import Counter, defaultdict
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, field

from specwriter.compare.text.similar import Words, overlap, similar_pairs
from specwriter.reading import Block, Paragraph

_WORD = re.compile(r"\w+(?:[./-]\w+)*")
_NUMBER = re.compile(r"^\W*(?:\d+(?:\.\d+)*|[A-Z])[.)]?\s+")
_RENAMED = 0.6
"""Share of common words from which a section under another heading is the same section."""

_SAME_TITLE = 0.15
"""Share of common words from which a section under the same heading is the same section."""

_SHORT = 12
"""A section of fewer words is not found again under another heading."""


@dataclass(frozen=True, slots=True)
class Section:
    """A heading with all that follows it up to the next; the first may have no heading."""

    heading: Paragraph | None
    blocks: tuple[Block, ...]
    above: str = ""
    """The heading of the level above."""
    words: Words = field(default_factory=Counter)

    @property
    def title(self) -> str:
        """The heading without a number, for finding it again."""
        if self.heading is None:
            return ""
        text = " ".join(self.heading.text.split())
        return _NUMBER.sub("", text).casefold()

    @property
    def weight(self) -> int:
        """How much of the text it is."""
        return 1 + self.words.total()


def words_of(text: str) -> Words:
    """How often each word stands in a text."""
    return Counter(_WORD.findall(text.casefold()))


def sections_of(blocks: Sequence[Block]) -> list[Section]:
    """The document cut before each heading."""
    found: list[Section] = []
    titles: dict[int, str] = {}
    for part in _cut(blocks):
        first = part[0] if part else None
        heading = first if isinstance(first, Paragraph) and first.heading else None
        level = heading.heading if heading else 0
        above = next((titles[i] for i in range(level - 1, 0, -1) if i in titles), "")
        section = Section(
            heading, tuple(part), above, words_of(" ".join(block.text for block in part))
        )
        if heading:
            titles = {**{k: v for k, v in titles.items() if k < level}, level: section.title}
        found.append(section)
    return found


def _cut(blocks: Iterable[Block]) -> Iterator[list[Block]]:
    part: list[Block] = []
    for block in blocks:
        if isinstance(block, Paragraph) and block.heading:
            yield part
            part = []
        part.append(block)
    yield part


def pair_sections(old: Sequence[Section], new: Sequence[Section]) -> dict[int, int]:
    """Old section → new section: by their headings first, then by the words they share."""
    pairs = {0: 0}
    for title in (_place, _title):
        pairs |= _by_title(old, new, pairs, title)
    left = [i for i, each in enumerate(old) if i not in pairs and each.weight > _SHORT]
    right = [j for j, each in enumerate(new) if j not in pairs.values() and each.weight > _SHORT]
    near = similar_pairs(
        [old[i].words for i in left], [new[j].words for j in right], _RENAMED, ordered=False
    )
    return pairs | {left[i]: right[j] for i, j in near.items()}


def _place(section: Section) -> tuple[str, str]:
    return section.above, section.title


def _title(section: Section) -> tuple[str, str]:
    return "", section.title


def _by_title(
    old: Sequence[Section],
    new: Sequence[Section],
    known: dict[int, int],
    title: object,
) -> dict[int, int]:
    """Sections with the same heading; several of one heading by what they share."""
    assert callable(title)
    was: dict[object, list[int]] = defaultdict(list)
    now: dict[object, list[int]] = defaultdict(list)
    taken = set(known.values())
    for i, each in enumerate(old):
        if i not in known and each.title:
            was[title(each)].append(i)
    for j, each in enumerate(new):
        if j not in taken and each.title:
            now[title(each)].append(j)
    found: dict[int, int] = {}
    for key, left in was.items():
        right = now.get(key, [])
        if len(left) == len(right) == 1:
            i, j = left[0], right[0]
            if overlap(old[i].words, new[j].words) >= _SAME_TITLE:
                found[i] = j
        elif left and right:
            near = similar_pairs(
                [old[i].words for i in left], [new[j].words for j in right], _RENAMED, ordered=False
            )
            found |= {left[i]: right[j] for i, j in near.items()}
    return found
