"""Word-level comparison against what the standard library and python-docx take for less."""

from __future__ import annotations

import io
import random
from collections.abc import Callable
from difflib import unified_diff
from time import process_time

import docx

from specwriter.compare.text import compare_texts
from specwriter.reading import Cell, Paragraph, Piece, Row, Table, Text
from tests.compare.redline.generated import WORDS

PAGES = 300
BLOCKS_A_PAGE = 20
"""Paragraphs of some 25 words, as on a page of a provision."""

Lines = list[tuple[str, int]]
"""Text, and the level of a heading or 0."""


def provision(pages: int) -> Lines:
    chance = random.Random(pages)
    return [
        (f"Clause {n}", 2)
        if n % 9 == 0
        else (" ".join(chance.choices(WORDS, k=chance.randint(15, 35))), 0)
        for n in range(pages * BLOCKS_A_PAGE)
    ]


def revised(lines: Lines) -> Lines:
    """Every fifth paragraph reworded, one in fifty gone, one in fifty new, two clauses swapped."""
    chance = random.Random(7)
    found: Lines = []
    for n, (text, level) in enumerate(lines):
        if level or n % 5:
            found.append((text, level))
            continue
        words = text.split(" ")
        words[chance.randrange(len(words))] = chance.choice(WORDS)
        if n % 50:
            found.append((" ".join(words), 0))
        elif n % 100:
            found += [(text, 0), (" ".join(chance.choices(WORDS, k=20)), 0)]
    return [*found[:9], *found[18:27], *found[9:18], *found[27:]]


def text_of(lines: Lines) -> Text:
    return Text(
        blocks=tuple(
            Paragraph(pieces=(Piece(text),), heading=level, style="H" if level else "B")
            for text, level in lines
        )
    )


def seconds(work: Callable[[], object]) -> float:
    """The best of two, in time of this process."""
    taken = []
    for _ in range(2):
        start = process_time()
        work()
        taken.append(process_time() - start)
    return min(taken)


def line_difference_and_file(old: Lines, new: Lines) -> None:
    was, now = ([text for text, _ in lines] for lines in (old, new))
    list(unified_diff(was, now, lineterm=""))
    document = docx.Document()
    for text, _ in new:
        document.add_paragraph(text)
    document.save(io.BytesIO())


def test_comparing_300_pages_by_word_costs_at_most_twice_lines_and_a_file() -> None:
    old = provision(PAGES)
    new = revised(old)
    before, after = text_of(old), text_of(new)

    ours = seconds(lambda: compare_texts(before, after))
    theirs = seconds(lambda: line_difference_and_file(old, new))

    assert not compare_texts(before, after).is_same
    assert ours <= 2 * theirs, f"{ours:.2f} s against {theirs:.2f} s"


def test_the_cost_grows_near_linearly_from_30_to_300_pages() -> None:
    def cost(pages: int) -> float:
        old = provision(pages)
        before, after = text_of(old), text_of(revised(old))
        return seconds(lambda: compare_texts(before, after))

    small, large = cost(PAGES // 10), cost(PAGES)

    assert large <= 20 * small, f"{large:.2f} s against {small:.3f} s"


def test_two_texts_with_nothing_in_common_do_not_take_the_square_of_their_length() -> None:
    def cost(pages: int) -> float:
        old, new = provision(pages), [(t[::-1], level) for t, level in provision(pages + 1)]
        before, after = text_of(old), text_of(new)
        return seconds(lambda: compare_texts(before, after))

    small, large = cost(15), cost(150)

    assert large <= 20 * small, f"{large:.2f} s against {small:.3f} s"


def test_a_long_table_is_compared_row_by_row_in_near_linear_time() -> None:
    def table(rows: int, skip: int) -> Text:
        chance = random.Random(3)
        made = [
            Row(
                cells=tuple(
                    Cell(blocks=(Paragraph(pieces=(Piece(" ".join(chance.choices(WORDS, k=4))),)),))
                    for _ in range(3)
                )
            )
            for _ in range(rows)
        ]
        return Text(blocks=(Table(rows=tuple(r for n, r in enumerate(made) if (n + 1) % skip)),))

    def cost(rows: int) -> float:
        before, after = table(rows, 10**6), table(rows, 7)
        return seconds(lambda: compare_texts(before, after))

    small, large = cost(200), cost(2000)

    assert large <= 20 * small, f"{large:.2f} s against {small:.3f} s"
