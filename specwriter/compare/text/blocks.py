"""The blocks of one clause or cell in two versions: paragraphs, tables, rows and cells."""

from __future__ import annotations

from collections.abc import Hashable, Iterator, Sequence

from specwriter.compare.text.pairs import (
    Added,
    Match,
    MatchedRow,
    MatchedTable,
    Part,
    Removed,
    Rewritten,
)
from specwriter.compare.text.sections import words_of
from specwriter.compare.text.sequence import equal_stretches, gaps
from specwriter.compare.text.similar import Words, similar_pairs
from specwriter.compare.text.words import compare_words, likeness
from specwriter.reading import Block, Cell, Paragraph, Row, Table

_ALIKE = 0.5
"""Share of common words from which a paragraph or row is a version of another."""

_ALIKE_TABLE = 0.3
"""The same for a table, whose frame says much."""


def key_of(block: Block) -> tuple[Hashable, ...]:
    """What makes two blocks equal: kind, style and text, and what pictures it holds."""
    if isinstance(block, Paragraph):
        things = tuple(likeness(piece) for piece in block.pieces if piece.thing)
        return block.style, block.heading, block.text, things
    return tuple(tuple(_cell_key(cell) for cell in row.cells) for row in block.rows)


def _cell_key(cell: Cell) -> Hashable:
    return tuple(key_of(block) for block in cell.blocks)


def _row_key(row: Row) -> Hashable:
    return tuple(_cell_key(cell) for cell in row.cells)


def match_blocks(
    old: Sequence[Block], new: Sequence[Block], *, cell: bool = False
) -> tuple[Part, ...]:
    """The blocks side by side. In a ``cell`` the last paragraphs always belong together.

    So do two headings at the beginning, whatever they say: the sections are one.
    """
    return tuple(_matched(old, new, cell))


def _matched(old: Sequence[Block], new: Sequence[Block], cell: bool) -> Iterator[Part]:
    tail: list[Part] = []
    if old and new and _is_heading(old[0]) and _is_heading(new[0]):
        yield _pair(old[0], new[0])
        old, new = old[1:], new[1:]
    if cell and _end_in_paragraphs(old, new):
        tail = [_pair(old[-1], new[-1])]
        old, new = old[:-1], new[:-1]
    equal = equal_stretches([key_of(b) for b in old], [key_of(b) for b in new])
    for (a, b, c, d), (e, f, g, _) in gaps(equal, len(old), len(new)):
        yield from _changed(old[a:b], new[c:d])
        yield from (_pair(old[e + k], new[g + k]) for k in range(f - e))
    yield from tail


def _end_in_paragraphs(old: Sequence[Block], new: Sequence[Block]) -> bool:
    return bool(old and new) and isinstance(old[-1], Paragraph) and isinstance(new[-1], Paragraph)


def _changed(old: Sequence[Block], new: Sequence[Block]) -> Iterator[Part]:
    pairs = _near(old, new)
    i = j = 0
    for k, m in (*pairs.items(), (len(old), len(new))):
        yield from (Removed(block=block) for block in old[i:k])
        yield from (Added(block=block) for block in new[j:m])
        if k < len(old):
            yield _pair(old[k], new[m])
        i, j = k + 1, m + 1


def _near(old: Sequence[Block], new: Sequence[Block]) -> dict[int, int]:
    """Old position → new position of versions of one block, none crossing another."""
    if not old or not new:
        return {}
    found = similar_pairs(
        [words_of(block.text) for block in old],
        [words_of(block.text) for block in new],
        _ALIKE_TABLE,
        ordered=True,
    )
    return {i: j for i, j in found.items() if _fits(old[i], new[j]) and _close(old[i], new[j])}


def _is_heading(block: Block) -> bool:
    return isinstance(block, Paragraph) and bool(block.heading)


def _close(old: Block, new: Block) -> bool:
    if isinstance(old, Table):
        return True
    was, now = words_of(old.text), words_of(new.text)
    total = was.total() + now.total()
    return total == 0 or 2 * (was & now).total() >= _ALIKE * total


def _fits(old: Block, new: Block) -> bool:
    """Whether one may become the other in place: style and number of columns stay."""
    if isinstance(old, Paragraph) and isinstance(new, Paragraph):
        return old.style == new.style and old.heading == new.heading and level(old) == level(new)
    return isinstance(old, Table) and isinstance(new, Table) and _columns(old) == _columns(new)


def level(paragraph: Paragraph) -> int | None:
    """The level in its list: a change from list to text, or of the level, is none of words."""
    return paragraph.list[1] if paragraph.list else None


def _columns(table: Table) -> int:
    return max((len(row.cells) for row in table.rows), default=0)


def _pair(old: Block, new: Block) -> Part:
    if isinstance(old, Paragraph) and isinstance(new, Paragraph):
        if old.text == new.text and key_of(old)[2:] == key_of(new)[2:]:
            return Match(old=old, new=new)
        return Rewritten(old=old, new=new, spans=compare_words(old, new))
    assert isinstance(old, Table)
    assert isinstance(new, Table)
    return MatchedTable(old=old, new=new, rows=tuple(_rows(old.rows, new.rows)))


def _rows(old: Sequence[Row], new: Sequence[Row]) -> Iterator[MatchedRow]:
    equal = equal_stretches([_row_key(row) for row in old], [_row_key(row) for row in new])
    for (a, b, c, d), (e, f, g, _) in gaps(equal, len(old), len(new)):
        yield from _changed_rows(old[a:b], new[c:d])
        yield from (_row(old[e + k], new[g + k]) for k in range(f - e))


def _changed_rows(old: Sequence[Row], new: Sequence[Row]) -> Iterator[MatchedRow]:
    pairs = _near_rows(old, new)
    i = j = 0
    for k, m in (*pairs.items(), (len(old), len(new))):
        yield from (MatchedRow(old=row, new=None) for row in old[i:k])
        yield from (MatchedRow(old=None, new=row) for row in new[j:m])
        if k < len(old):
            yield _row(old[k], new[m])
        i, j = k + 1, m + 1


def _near_rows(old: Sequence[Row], new: Sequence[Row]) -> dict[int, int]:
    if not old or not new:
        return {}
    if len(old) == len(new) == 1 and len(old[0].cells) == len(new[0].cells):
        return {0: 0}
    found = similar_pairs(
        [_row_words(row) for row in old], [_row_words(row) for row in new], _ALIKE, ordered=True
    )
    return {i: j for i, j in found.items() if len(old[i].cells) == len(new[j].cells)}


def _row_words(row: Row) -> Words:
    """Its words; the first cell names the row, so it counts more than the others."""
    return words_of(" ".join((row.text, *(cell.text for cell in row.cells[:1] * 2))))


def _row(old: Row, new: Row) -> MatchedRow:
    cells = zip(old.cells, new.cells, strict=True)
    return MatchedRow(
        old=old,
        new=new,
        cells=tuple(match_blocks(was.blocks, now.blocks, cell=True) for was, now in cells),
    )
