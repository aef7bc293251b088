"""Blocks without a Word file of their own → a Word file, in the frame of another."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import replace

from specwriter.compare.redline.runs import runs
from specwriter.reading import Block, Cell, Paragraph, Piece, Row, Table, Text
from specwriter.reading.package import DOCUMENT, read_package, write_package
from specwriter.reading.xml import R_NAME, W_NAME

_WIDTH = 9360
"""Twips between the margins of letter paper."""

_UNNUMBERED = '<w:numPr><w:ilvl w:val="0"/><w:numId w:val="0"/></w:numPr>'


def flat(text: Text) -> Text:
    """The text with its numbers written out and no look of its own.

    A text of one form and a Word file can only be compared when both say their numbers alike.
    """
    return Text(blocks=tuple(_flat(text.blocks, in_table=False)), tracked=text.tracked)


def _flat(blocks: Iterable[Block], *, in_table: bool) -> Iterator[Block]:
    for block in blocks:
        if isinstance(block, Table):
            yield Table(rows=tuple(_flat_row(row) for row in block.rows))
            continue
        text = " ".join(filter(None, (block.label, block.text)))
        style = "TableText" if in_table else "BodyText"
        if block.heading and not in_table:
            style = f"Heading{min(block.heading, 2)}"
        heading = min(block.heading, 2) if not in_table else 0
        yield Paragraph(pieces=(Piece(text),) if text else (), style=style, heading=heading)


def _flat_row(row: Row) -> Row:
    return Row(cells=tuple(Cell(blocks=_flat_cell(cell)) for cell in row.cells))


def _flat_cell(cell: Cell) -> tuple[Block, ...]:
    return tuple(_flat(cell.blocks, in_table=True))


def word_file(text: Text, frame: bytes) -> bytes:
    """A Word file with these blocks; looks, header and footer are those of ``frame``."""
    parts = read_package(frame)
    body = "".join(_block(block) for block in text.blocks) or "<w:p/>"
    document = parts[DOCUMENT].decode("utf-8")
    section = document[document.rindex("<w:sectPr") : document.rindex("</w:body>")]
    parts[DOCUMENT] = (
        '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n'
        f'<w:document xmlns:w="{W_NAME}" xmlns:r="{R_NAME}"><w:body>{body}{section}'
        "</w:body></w:document>"
    ).encode()
    return write_package(parts)


def _block(block: Block) -> str:
    if isinstance(block, Paragraph):
        return _paragraph(block)
    columns = max((len(row.cells) for row in block.rows), default=1)
    width = _WIDTH // columns
    grid = f'<w:gridCol w:w="{width}"/>' * columns
    rows = "".join(_row(row, width) for row in block.rows)
    properties = (
        f'<w:tblPr><w:tblStyle w:val="Grid"/><w:tblW w:w="{_WIDTH}" w:type="dxa"/></w:tblPr>'
    )
    # Two tables with nothing between would become one.
    return f"<w:tbl>{properties}<w:tblGrid>{grid}</w:tblGrid>{rows}</w:tbl><w:p/>"


def _row(row: Row, width: int) -> str:
    cells = "".join(
        f'<w:tc><w:tcPr><w:tcW w:w="{width}" w:type="dxa"/></w:tcPr>'
        f"{''.join(_block(block) for block in cell.blocks) or '<w:p/>'}</w:tc>"
        for cell in row.cells
    )
    return f"<w:tr>{cells}</w:tr>"


def _paragraph(paragraph: Paragraph) -> str:
    number = _UNNUMBERED if paragraph.heading else ""
    properties = f'<w:pStyle w:val="{paragraph.style}"/>{number}'
    pieces = (replace(piece, thing="") for piece in paragraph.pieces)
    return f"<w:p><w:pPr>{properties}</w:pPr>{runs(pieces)}</w:p>"
