"""A table → WordprocessingML: ruled, its header repeated, no row torn over two pages."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from specwriter.assemble.document import Run, Table
from specwriter.render.docx_page import INDENT
from specwriter.render.docx_widths import best_widths
from specwriter.render.docx_xml import paragraph, run, unbroken, xml_text

_MANY_COLUMNS = 6
_SHORT = 17
"""A table of up to so many lines, its head among them, stays on one page."""


def indent(table: Table) -> int:
    """Twips from the margin to the table; a table of many columns takes the whole width."""
    return 0 if len(table.header) >= _MANY_COLUMNS else INDENT


def table_xml(table: Table, runs: Callable[[tuple[Run, ...]], str], page: int) -> str:
    """The table without its caption; a caption between two keeps Word from joining them.

    ``page`` is the width between the margins, in twips.
    """
    room = page - indent(table)
    widths, lines = best_widths(table, room)
    head = _row([run(text) for text in table.header], widths, "TableHead", header=True)
    last = len(table.rows) - 1
    short = lines <= _SHORT
    rows = [
        # The first two rows stay together, and the last two.
        _row(
            [runs(tuple(map(_unbroken, cell))) for cell in row],
            widths,
            "TableText",
            keep=place < last and (short or place in (0, last - 1)),
        )
        for place, row in enumerate(table.rows)
    ]
    grid = "".join(f'<w:gridCol w:w="{width}"/>' for width in widths)
    return (
        f"<w:tbl>{_properties(table, room)}<w:tblGrid>{grid}</w:tblGrid>"
        f"{head}{''.join(rows)}</w:tbl>"
    )


def _unbroken(each: Run) -> Run:
    return replace(each, text=unbroken(each.text)) if "-" in each.text else each


def _properties(table: Table, room: int) -> str:
    return (
        f'<w:tblPr><w:tblStyle w:val="Grid"/><w:tblW w:w="{room}" w:type="dxa"/>'
        f'<w:tblInd w:w="{indent(table)}" w:type="dxa"/><w:tblLayout w:type="fixed"/>'
        f'<w:tblLook w:val="0020" w:firstRow="1" w:lastRow="0" w:firstColumn="0"'
        f' w:lastColumn="0" w:noHBand="1" w:noVBand="1"/>'
        f'<w:tblCaption w:val="{xml_text(table.caption)}"/></w:tblPr>'
    )


def _row(
    cells: list[str],
    widths: tuple[int, ...],
    style: str,
    *,
    header: bool = False,
    keep: bool = False,
) -> str:
    kept = "<w:keepNext/>" if keep else ""
    repeated = "<w:tblHeader/>" if header else ""
    shade = '<w:shd w:val="clear" w:color="auto" w:fill="E4E8EC"/>' if header else ""
    made = "".join(
        f'<w:tc><w:tcPr><w:tcW w:w="{width}" w:type="dxa"/>{shade}</w:tcPr>'
        f"{paragraph(cell, style, kept)}</w:tc>"
        for cell, width in zip(cells, widths, strict=True)
    )
    return f"<w:tr><w:trPr><w:cantSplit/>{repeated}</w:trPr>{made}</w:tr>"
