"""Comparing two long provisions by word against lines by the standard library and a bare file.

::

    python -m tests.benchmarks.compare

prints ratios of the best of several runs in one process: at most 2 is wanted for comparing 300
pages, and near 10 for 300 pages against 30. The redline itself is measured too, from two Word
files to one.
"""

from __future__ import annotations

import io
import random
from collections.abc import Callable
from difflib import unified_diff
from time import process_time

import docx

from specwriter.compare.redline import Author, redline
from specwriter.compare.redline.plain import word_file
from specwriter.compare.text import compare_texts
from specwriter.reading import Paragraph, Piece, Text
from tests.compare.redline.generated import WORDS

PAGES = 300
BLOCKS_A_PAGE = 20
"""Paragraphs of some 25 words, as on a page of a provision."""

Lines = list[tuple[str, int]]
"""Text, and the level of a heading or 0."""


def provision(pages: int) -> Lines:
    """Clauses of nine paragraphs each."""
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
    """The lines as a document that was read."""
    return Text(
        blocks=tuple(
            Paragraph(
                pieces=(Piece(text),),
                heading=level,
                style=f"Heading{level}" if level else "BodyText",
            )
            for text, level in lines
        )
    )


def seconds(work: Callable[[], object], runs: int = 2) -> float:
    """The best of some runs, in time of this process."""
    taken = []
    for _ in range(runs):
        start = process_time()
        work()
        taken.append(process_time() - start)
    return min(taken)


def line_difference_and_file(old: Lines, new: Lines) -> None:
    """What the comparison is held against."""
    was, now = ([text for text, _ in lines] for lines in (old, new))
    list(unified_diff(was, now, lineterm=""))
    document = docx.Document()
    for text, _ in new:
        document.add_paragraph(text)
    document.save(io.BytesIO())


def costs(pages: int) -> tuple[float, float, float]:
    """Comparing by word, what it is held against, and the redline from two files."""
    old = provision(pages)
    new = revised(old)
    before, after = text_of(old), text_of(new)
    buffer = io.BytesIO()
    docx.Document().save(buffer)
    files = [word_file(text, buffer.getvalue()) for text in (before, after)]
    author = Author(name="Reviewer")
    return (
        seconds(lambda: compare_texts(before, after)),
        seconds(lambda: line_difference_and_file(old, new)),
        seconds(lambda: redline(files[0], files[1], author)),
    )


def main() -> None:
    """Prints the ratios."""
    few, many = costs(PAGES // 10), costs(PAGES)
    print(f"comparing {PAGES} pages by word: {many[0] / many[1]:.2f} times lines and a bare file")
    print(
        f"the same with reading both files and writing the redline: {many[2] / many[1]:.2f} times"
    )
    growth = [large / small for large, small in zip(many, few, strict=True)]
    print(
        f"{PAGES} pages against {PAGES // 10}: comparing {growth[0]:.1f} times, "
        f"lines and a bare file {growth[1]:.1f} times, redline {growth[2]:.1f} times"
    )


if __name__ == "__main__":
    main()
