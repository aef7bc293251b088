"""The bookmarks of a redline and what they show, before a word of it is written."""

from __future__ import annotations

from collections.abc import Iterable

from specwriter.compare.redline.lists import Lists
from specwriter.compare.redline.references import References
from specwriter.compare.redline.spans import arranged
from specwriter.compare.text import Added, Match, MatchedRow, MatchedTable, Part, Removed, Rewritten
from specwriter.reading import Block
from specwriter.reading.block import paragraphs


def survey(parts: Iterable[Part], lists: Lists) -> References:
    """Counts every paragraph as an office program does, changes shown, and notes its bookmarks."""
    references = References()
    _parts(parts, lists, references)
    return references


def _parts(parts: Iterable[Part], lists: Lists, references: References) -> None:
    for placed, spans in arranged(parts, lists):
        part = placed.part
        match part:
            case Match() | Rewritten():
                references.learn_both(part.old, part.new, spans, lists.shown(part.new))
            case Removed() | Added():
                _alone((part.block,), isinstance(part, Removed), lists, references)
            case MatchedTable():
                for row in part.rows:
                    _row(row, lists, references)


def _row(row: MatchedRow, lists: Lists, references: References) -> None:
    if row.old and row.new:
        for parts in row.cells:
            _parts(parts, lists, references)
        return
    for each in (row.old, row.new):
        for cell in each.cells if each else ():
            _alone(cell.blocks, each is row.old, lists, references)


def _alone(blocks: tuple[Block, ...], is_old: bool, lists: Lists, references: References) -> None:
    for paragraph in paragraphs(blocks):
        number = lists.shown(paragraph, is_old=is_old)
        if not is_old:
            references.learn_new(paragraph, number)
