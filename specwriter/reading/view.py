"""One of the two readings of a document with tracked changes, with the numbers that it shows."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import replace
from typing import Literal

from specwriter.reading.block import Block, Paragraph, State, Table, Text
from specwriter.reading.counting import Counting

_GONE: dict[str, State] = {"new": "deleted", "old": "inserted"}


def seen(text: Text, view: Literal["new", "old"], counting: Counting) -> Text:
    """The document with every change accepted (``new``) or rejected (``old``)."""
    gone = _GONE[view]
    margins = (
        replace(each, blocks=tuple(_blocks(each.blocks, gone, counting))) for each in text.margins
    )
    blocks = tuple(_blocks(text.blocks, gone, counting))
    return replace(text, blocks=blocks, margins=tuple(margins))


def _blocks(blocks: Iterable[Block], gone: State, counting: Counting) -> Iterator[Block]:
    waiting: list[Paragraph] = []
    for block in blocks:
        if isinstance(block, Table):
            yield from _flushed(waiting, counting)
            table = _table(block, gone, counting)
            if table.rows:
                yield table
            continue
        waiting.append(_paragraph(block, gone))
        if block.mark != gone:
            yield _numbered(_merged(waiting), counting)
            waiting.clear()
    yield from _flushed(waiting, counting)


def _flushed(waiting: list[Paragraph], counting: Counting) -> Iterator[Paragraph]:
    """Paragraphs whose mark is gone and that nothing follows to take their text."""
    if any(each.pieces for each in waiting):
        yield _numbered(_merged(waiting), counting)
    waiting.clear()


def _paragraph(paragraph: Paragraph, gone: State) -> Paragraph:
    if before := paragraph.before:
        settings = before if gone == "inserted" else paragraph
        paragraph = replace(
            paragraph,
            style=settings.style,
            heading=settings.heading,
            list=settings.list,
            properties=settings.properties,
            before=None,
        )
    if all(piece.state == "kept" for piece in paragraph.pieces) and paragraph.mark == "kept":
        return paragraph
    pieces = (replace(p, state="kept") for p in paragraph.pieces if p.state != gone)
    return replace(paragraph, pieces=tuple(pieces), mark="kept")


def _merged(waiting: list[Paragraph]) -> Paragraph:
    """Paragraphs joined into one; the last mark says how it is set."""
    if len(waiting) == 1:
        return waiting[0]
    pieces = tuple(piece for each in waiting for piece in each.pieces)
    return replace(waiting[-1], pieces=pieces)


def _numbered(paragraph: Paragraph, counting: Counting) -> Paragraph:
    if paragraph.list is None:
        return paragraph
    num, level = paragraph.list
    label, running = counting.next(num, level), counting.running(num)
    written = f'<w:numId w:val="{num}"/>'
    if running == num or written not in paragraph.properties:
        return replace(paragraph, label=label)
    properties = paragraph.properties.replace(written, f'<w:numId w:val="{running}"/>')
    return replace(paragraph, label=label, list=(running, level), properties=properties)


def _table(table: Table, gone: State, counting: Counting) -> Table:
    rows = []
    for row in table.rows:
        if row.state == gone:
            continue
        cells = tuple(
            replace(cell, blocks=tuple(_blocks(cell.blocks, gone, counting))) for cell in row.cells
        )
        rows.append(replace(row, cells=cells, state="kept"))
    return replace(table, rows=tuple(rows))
