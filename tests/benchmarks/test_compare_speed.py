"""Word-level comparison against what the standard library and python-docx take for less."""

from __future__ import annotations

import random

from specwriter.compare.text import compare_texts
from specwriter.reading import Cell, Paragraph, Piece, Row, Table, Text
from tests.benchmarks.compare import (
    PAGES,
    line_difference_and_file,
    provision,
    revised,
    seconds,
    text_of,
)
from tests.compare.redline.generated import WORDS


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
