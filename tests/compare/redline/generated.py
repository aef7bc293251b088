"""Provisions made by rule, and a second edition of each with edits of every kind."""

from __future__ import annotations

import random
from collections.abc import Callable
from dataclasses import replace
from zlib import crc32

from specwriter.assemble.document import (
    Block,
    Clause,
    Document,
    ListItem,
    Note,
    Paragraph,
    Part,
    Run,
    Table,
)
from specwriter.render import render_docx
from tests.render.sample import SAMPLE

_VOCABULARY = (
    "groove depth width spacing land ridge blade head pass lane shall not exceed at least at most "
    "3/16 in 1/8 in 0.125 in 60 in/mi 95 percent 1,000 ft each mean measured by the Contractor "
    "Agency before after texturing slurry residue collect joint deck Route 9 (3.2 mm) ± accepted "
    "remedy retest cut again where a groove is shallower the edge of pavement and record it"
)
WORDS = _VOCABULARY.split()


def document(seed: int) -> Document:
    """A provision of a few parts, every kind of block among them."""
    chance = random.Random(seed)
    parts = tuple(_part(chance, number) for number in range(1, chance.randint(2, 4)))
    return replace(
        SAMPLE, parts=parts, open_decisions=(), cautions=(), unexpressed=(), status="", job_text=""
    )


def edited(old: Document, seed: int, edits: int) -> Document:
    """The document with some edits; numbers of parts, clauses and tables follow."""
    chance = random.Random(seed)
    new = old
    for _ in range(edits):
        edit: Callable[[random.Random, Document], Document] = chance.choice(EDITS)
        new = edit(chance, new)
    return numbered(new)


def pair(seed: int) -> tuple[bytes, bytes]:
    """Two editions as Word files."""
    old = numbered(document(seed))
    new = edited(old, seed + 7919, random.Random(seed).randint(1, 9))
    return render_docx(old), render_docx(new)


def referring_pair(seed: int) -> tuple[bytes, bytes]:
    """Two editions whose paragraphs refer to clauses and tables, kept and changed ones alike."""
    old = numbered(document(seed))
    new = edited(old, seed + 7919, random.Random(seed).randint(1, 9))
    return render_docx(_referring(old)), render_docx(_referring(new))


def _referring(document: Document) -> Document:
    clauses = [clause for part in document.parts for clause in part.clauses]
    tables = [each for clause in clauses for each in clause.blocks if isinstance(each, Table)]
    targets = [(each.id, each.number) for each in clauses]
    targets += [(each.id, str(each.number)) for each in tables]

    def refer(block: Block) -> Block:
        if not isinstance(block, Paragraph):
            return block
        # What a paragraph refers to hangs on its words alone, so that an edition keeps it.
        chosen = crc32(block.runs[0].text.encode())
        target, number = targets[chosen % len(targets)]
        middle = Run(text=number, kind="reference", target=target)
        return Paragraph(runs=(Run(text="See "), middle, Run(text=" for it. "), *block.runs))

    return replace(
        document,
        parts=tuple(
            replace(
                part,
                clauses=tuple(
                    replace(clause, blocks=tuple(map(refer, clause.blocks)))
                    for clause in part.clauses
                ),
            )
            for part in document.parts
        ),
    )


def _words(chance: random.Random, least: int, most: int) -> str:
    return " ".join(chance.choices(WORDS, k=chance.randint(least, most))).capitalize() + "."


def _runs(chance: random.Random, least: int = 6, most: int = 40) -> tuple[Run, ...]:
    runs = [Run(text=_words(chance, least, most))]
    if chance.random() < 0.2:
        runs.append(Run(text=" " + _words(chance, 1, 3), kind="strong"))
    if chance.random() < 0.2:
        runs.append(Run(text=" " + _words(chance, 1, 3)))
    return tuple(runs)


def _part(chance: random.Random, number: int) -> Part:
    clauses = tuple(_clause(chance, f"p{number}c{place}") for place in range(chance.randint(2, 5)))
    title = " ".join(chance.sample(WORDS, 2)).title()
    return Part(id=f"p{number}", number="0", title=f"{title} {number}", clauses=clauses)


def _clause(chance: random.Random, id: str) -> Clause:
    title = " ".join(chance.sample(WORDS, 3)).capitalize()
    blocks: list[Block] = [Paragraph(runs=_runs(chance))]
    for _ in range(chance.randint(0, 3)):
        blocks += _blocks(chance, id, len(blocks))
    return Clause(id=id, number="0", title=title, blocks=tuple(blocks))


def _blocks(chance: random.Random, id: str, place: int) -> list[Block]:
    kind = chance.randrange(5)
    if kind == 0:
        return _list(chance)
    if kind == 1:
        return [_table(chance, f"{id}t{place}"), Paragraph(runs=_runs(chance))]
    if kind == 2:
        return [Note(runs=_runs(chance))]
    return [Paragraph(runs=_runs(chance))]


def _list(chance: random.Random) -> list[Block]:
    items: list[Block] = [
        ListItem(runs=_runs(chance, 3, 9), label="", starts=not place)
        for place in range(chance.randint(2, 5))
    ]
    if chance.random() < 0.4:
        nested = [
            ListItem(runs=_runs(chance, 3, 6), label="", level=1, starts=not place)
            for place in range(2)
        ]
        items[1:1] = nested
    return items


def _table(chance: random.Random, id: str) -> Table:
    columns = chance.randint(2, 4)
    rows = tuple(_row(chance, columns) for _ in range(chance.randint(2, 6)))
    header = tuple(_words(chance, 1, 2) for _ in range(columns))
    return Table(id=id, number=0, caption=_words(chance, 2, 4), header=header, rows=rows)


def _row(chance: random.Random, columns: int) -> tuple[tuple[Run, ...], ...]:
    return tuple((Run(text=_words(chance, 1, 6)),) for _ in range(columns))


def numbered(document: Document) -> Document:
    """The document with its parts, clauses and tables numbered in order."""
    tables = 0
    parts = []
    for p, part in enumerate(document.parts, start=1):
        clauses = []
        for c, clause in enumerate(part.clauses, start=1):
            blocks = []
            for block in clause.blocks:
                if isinstance(block, Table):
                    tables += 1
                    blocks.append(replace(block, number=tables))
                else:
                    blocks.append(block)
            clauses.append(replace(clause, number=f"{p}.{c}", blocks=tuple(blocks)))
        parts.append(replace(part, number=str(p), clauses=tuple(clauses)))
    return replace(document, parts=tuple(parts))


def _on_clauses(
    chance: random.Random,
    document: Document,
    change: Callable[[list[Clause]], None],
) -> Document:
    place = chance.randrange(len(document.parts))
    clauses = list(document.parts[place].clauses)
    change(clauses)
    if not clauses:
        return document
    parts = list(document.parts)
    parts[place] = replace(parts[place], clauses=tuple(clauses))
    return replace(document, parts=tuple(parts))


def _on_blocks(
    chance: random.Random, document: Document, change: Callable[[list[Block]], None]
) -> Document:
    def on(clauses: list[Clause]) -> None:
        place = chance.randrange(len(clauses))
        blocks = list(clauses[place].blocks)
        change(blocks)
        if blocks:
            clauses[place] = replace(clauses[place], blocks=tuple(blocks))

    return _on_clauses(chance, document, on)


def _reworded(chance: random.Random, runs: tuple[Run, ...]) -> tuple[Run, ...]:
    first, *rest = runs
    words = first.text.split(" ")
    at = chance.randrange(len(words) + 1)
    kind = chance.randrange(4)
    if kind == 0:
        words[at:at] = chance.sample(WORDS, chance.randint(1, 3))
    elif kind == 1:
        del words[at : at + chance.randint(1, 3)]
    elif kind == 2:
        words[at : at + 1] = chance.sample(WORDS, 1)
    else:
        words += chance.sample(WORDS, 2)
    return (replace(first, text=" ".join(words) or "x"), *rest)


def words_change(chance: random.Random, document: Document) -> Document:
    def change(blocks: list[Block]) -> None:
        at = chance.randrange(len(blocks))
        block = blocks[at]
        if isinstance(block, Table):
            row = chance.randrange(len(block.rows))
            rows = [list(each) for each in block.rows]
            cell = chance.randrange(len(rows[row]))
            rows[row][cell] = _reworded(chance, rows[row][cell])
            blocks[at] = replace(block, rows=tuple(map(tuple, rows)))
        else:
            blocks[at] = replace(block, runs=_reworded(chance, block.runs))

    return _on_blocks(chance, document, change)


def block_comes(chance: random.Random, document: Document) -> Document:
    def change(blocks: list[Block]) -> None:
        at = chance.randint(1, len(blocks))
        blocks[at:at] = _blocks(chance, f"n{chance.randrange(10**6)}", at)

    return _on_blocks(chance, document, change)


def block_goes(chance: random.Random, document: Document) -> Document:
    def change(blocks: list[Block]) -> None:
        del blocks[chance.randrange(len(blocks))]

    return _on_blocks(chance, document, change)


def row_comes_or_goes(chance: random.Random, document: Document) -> Document:
    def change(blocks: list[Block]) -> None:
        for at, block in enumerate(blocks):
            if isinstance(block, Table):
                rows = list(block.rows)
                place = chance.randrange(len(rows))
                if chance.random() < 0.5 or len(rows) == 1:
                    rows.insert(place, _row(chance, len(block.header)))
                else:
                    del rows[place]
                blocks[at] = replace(block, rows=tuple(rows))

    return _on_blocks(chance, document, change)


def clauses_swap(chance: random.Random, document: Document) -> Document:
    def change(clauses: list[Clause]) -> None:
        i, j = chance.randrange(len(clauses)), chance.randrange(len(clauses))
        clauses[i], clauses[j] = clauses[j], clauses[i]

    return _on_clauses(chance, document, change)


def clause_comes(chance: random.Random, document: Document) -> Document:
    def change(clauses: list[Clause]) -> None:
        at = chance.randint(0, len(clauses))
        clauses.insert(at, _clause(chance, f"n{chance.randrange(10**6)}"))

    return _on_clauses(chance, document, change)


def clause_goes(chance: random.Random, document: Document) -> Document:
    def change(clauses: list[Clause]) -> None:
        if len(clauses) > 1:
            del clauses[chance.randrange(len(clauses))]

    return _on_clauses(chance, document, change)


def blocks_swap(chance: random.Random, document: Document) -> Document:
    def change(blocks: list[Block]) -> None:
        i, j = chance.randrange(len(blocks)), chance.randrange(len(blocks))
        blocks[i], blocks[j] = blocks[j], blocks[i]

    return _on_blocks(chance, document, change)


EDITS = (
    words_change,
    words_change,
    words_change,
    block_comes,
    block_goes,
    row_comes_or_goes,
    row_comes_or_goes,
    clauses_swap,
    clause_comes,
    clause_goes,
    blocks_swap,
)


def merged_pair(seeds: range) -> tuple[bytes, bytes]:
    """Several pairs in one file a side: an office then has to start and open less often."""
    olds = [document(seed) for seed in seeds]
    news = [edited(old, seed + 7919, 1 + seed % 9) for old, seed in zip(olds, seeds, strict=True)]
    return tuple(  # type: ignore[return-value]
        render_docx(numbered(replace(each[0], parts=tuple(p for d in each for p in d.parts))))
        for each in (olds, news)
    )
