"""A table → WordprocessingML: ruled, its header repeated, no row torn over two pages."""

from __future__ import annotations

from collections.abc import Callable
from itertools import pairwise

from specwriter.assemble.document import Run, Table
from specwriter.render.docx_xml import paragraph, run, xml_text

INDENT = 720
"""Twips from the margin, as far as the text of a clause."""

WIDTH = 9360 - INDENT
"""Twips from the indent to the right margin: letter paper with margins of one inch."""


def table_xml(table: Table, runs: Callable[[tuple[Run, ...]], str]) -> str:
    """The table without its caption; a caption between two keeps Word from joining them."""
    widths = column_widths(table.widths or (1,) * len(table.header))
    head = _row([run(text) for text in table.header], widths, "TableHead", header=True)
    rows = [_row([runs(cell) for cell in row], widths, "TableText") for row in table.rows]
    grid = "".join(f'<w:gridCol w:w="{width}"/>' for width in widths)
    return (
        f"<w:tbl>{_properties(table.caption)}<w:tblGrid>{grid}</w:tblGrid>"
        f"{head}{''.join(rows)}</w:tbl>"
    )


def column_widths(shares: tuple[int, ...]) -> tuple[int, ...]:
    """Twips of each column; they add up to the width of the text, whatever the rounding."""
    total, ends, seen = sum(shares), [0], 0
    for share in shares:
        seen += share
        ends.append(WIDTH * seen // total)
    return tuple(end - start for start, end in pairwise(ends))


def _properties(caption: str) -> str:
    return (
        f'<w:tblPr><w:tblStyle w:val="Grid"/><w:tblW w:w="{WIDTH}" w:type="dxa"/>'
        f'<w:tblInd w:w="{INDENT}" w:type="dxa"/><w:tblLayout w:type="fixed"/>'
        f'<w:tblLook w:val="0020" w:firstRow="1" w:lastRow="0" w:firstColumn="0"'
        f' w:lastColumn="0" w:noHBand="1" w:noVBand="1"/>'
        f'<w:tblCaption w:val="{xml_text(caption)}"/></w:tblPr>'
    )


def _row(cells: list[str], widths: tuple[int, ...], style: str, *, header: bool = False) -> str:
    repeated = "<w:tblHeader/>" if header else ""
    shade = '<w:shd w:val="clear" w:color="auto" w:fill="E4E8EC"/>' if header else ""
    made = "".join(
        f'<w:tc><w:tcPr><w:tcW w:w="{width}" w:type="dxa"/>{shade}</w:tcPr>'
        f"{paragraph(cell, style)}</w:tc>"
        for cell, width in zip(cells, widths, strict=True)
    )
    return f"<w:tr><w:trPr><w:cantSplit/>{repeated}</w:trPr>{made}</w:tr>"
