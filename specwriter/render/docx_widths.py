"""How wide each column of a table is, in twips: so that the table is low and no word is broken."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from functools import cache
from math import ceil

from specwriter.assemble.document import Table
from specwriter.render.figure.letters import advances

PADDING = 180
"""Twips that a cell keeps free on its left and right, as style Grid says, and for its rules."""

_SIZE = 190
"""Twips of the letters of a table: 9.5 points, as style TableText says."""

_BOLD = 1.2
"""A bold word is wider by that at most, one of narrow letters: "[statistic]" by 1.14 in Arial."""

_BOLD_KINDS = ("strong", "blank")
_SPACE = 53
"""Twips of a space of that size."""

_VALUE = 14
"""A cell that begins with a digit and has so many letters at most stays on one line."""

_STEPS = (480, 120)
"""Twips that one column gives another while the table becomes lower by it."""

Height = tuple[int, int]
"""Lines that the table takes; then, to tell equals apart, lines that all cells take."""


def best_widths(table: Table, room: int) -> tuple[tuple[int, ...], int]:
    """The width of each column, and how many lines the table takes with them, about.

    The widths that the table names; else the best of a few ways to share the room, and from
    there on step by step what makes the table lower.
    """
    heights = _Heights(table)
    least = _longest_words(table)
    if table.widths:
        widths = column_widths(table.widths, least, room)
    else:
        tries = [column_widths(shares, least, room) for shares in _shares(table)]
        widths = _lowered(min(tries, key=heights.of), least, heights)
    return widths, heights.of(widths)[0]


def column_widths(shares: Sequence[int], least: Sequence[int], room: int) -> tuple[int, ...]:
    """Twips of each column: its share of the room, but no less than its longest word takes.

    The widths add up to the room. When the longest words take more than that, they are the
    shares.
    """
    if sum(least) > room:
        shares, least = least, [0] * len(least)
    free = set(range(len(shares)))
    while True:
        left = room - sum(each for i, each in enumerate(least) if i not in free)
        parts = sum(shares[i] for i in free)
        short = {i for i in free if left * shares[i] < least[i] * parts}
        if not short or short == free:
            break
        free -= short
    widths = [left * s // parts if i in free else least[i] for i, s in enumerate(shares)]
    widths[max(free)] += room - sum(widths)
    return tuple(widths)


class _Heights:
    """How low a table is with given widths; each column is broken into lines once a width."""

    def __init__(self, table: Table) -> None:
        self._columns = [
            [[ceil(_BOLD * each) for each in _widths(title)], *map(_widths, texts)]
            for title, texts in zip(table.header, _columns(table), strict=True)
        ]
        self._lines = cache(self._lines_of)

    def of(self, widths: Sequence[int]) -> Height:
        """Lines of the table, and of all cells."""
        columns = [self._lines(i, w - PADDING) for i, w in enumerate(widths)]
        return sum(map(max, zip(*columns, strict=True))), sum(map(sum, columns))

    def _lines_of(self, column: int, room: int) -> list[int]:
        return [_broken(words, room) for words in self._columns[column]]


def _widths(text: str) -> list[int]:
    return [_width(word) for word in text.split()]


def _broken(words: Sequence[int], room: int) -> int:
    """Lines that words of these widths take in so much room."""
    lines, at = 1, -_SPACE
    for word in words:
        at += _SPACE + word
        if at > room and at > word:
            lines, at = lines + 1, word
    return lines


def _lowered(widths: tuple[int, ...], least: Sequence[int], heights: _Heights) -> tuple[int, ...]:
    for step in _STEPS:
        while True:
            tries = list(_exchanges(widths, least, step))
            best = min(tries, key=heights.of, default=widths)
            if heights.of(best) >= heights.of(widths):
                break
            widths = best
    return widths


def _exchanges(
    widths: tuple[int, ...], least: Sequence[int], step: int
) -> Iterator[tuple[int, ...]]:
    """The widths with one column narrower by a step and another wider."""
    for giver, width in enumerate(widths):
        if width - step < least[giver]:
            continue
        for taker in range(len(widths)):
            if taker != giver:
                change = {giver: -step, taker: step}
                yield tuple(each + change.get(i, 0) for i, each in enumerate(widths))


def _longest_words(table: Table) -> list[int]:
    """Twips that the longest word of each column takes, with the padding of its cell."""
    return [
        PADDING + max(_longest([title], _BOLD), _longest(texts, _BOLD if marked else 1))
        for title, texts, marked in zip(table.header, _columns(table), _marked(table), strict=True)
    ]


def _longest(texts: Sequence[str], weight: float) -> int:
    widths = [_width(word) for text in texts for word in _words(text)]
    return ceil(weight * max(widths, default=_SPACE))


def _words(text: str) -> list[str]:
    """What a line must not break: each word, and a short value with its unit."""
    return [text] if text[:1].isdigit() and len(text) <= _VALUE else text.split()


@cache
def _width(word: str) -> int:
    """Twips that a word takes."""
    return sum(advances(word, _SIZE))


def _marked(table: Table) -> Iterator[bool]:
    """True for each column that holds a bold run."""
    for index in range(len(table.header)):
        yield any(run.kind in _BOLD_KINDS for row in table.rows for run in row[index])


def _columns(table: Table) -> Iterator[list[str]]:
    """The texts of each column below its title."""
    for index in range(len(table.header)):
        yield ["".join(run.text for run in row[index]) for row in table.rows]


def _shares(table: Table) -> Iterator[list[int]]:
    """Shares by the letters of each column, long cells counting more: they make a row tall."""
    columns = zip(table.header, _columns(table), strict=True)
    squares = [sum(len(text) ** 2 for text in (title, *texts)) + 1 for title, texts in columns]
    for power in (0.5, 0.4, 0.3, 0.2):
        yield [round(100 * each**power) for each in squares]
