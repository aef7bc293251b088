"""A table → WordprocessingML: ruled, its header repeated, no row torn over two pages."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence

from specwriter.assemble.document import Run, Table
from specwriter.render.docx_page import INDENT
from specwriter.render.docx_xml import paragraph, run, xml_text

_MANY_COLUMNS = 6
_SHORT = 6
_LONG = 60
"""Up to so many rows, with no cell of so many letters, a table stays on one page."""

_PADDING = 160
"""Twips that a cell keeps free on its left and right, as style Grid says."""

_LETTER = 118
"""Twips that a letter of a bold word takes on the average at 9.5 points; found by trial."""


def indent(table: Table) -> int:
    """Twips from the margin to the table; a table of many columns takes the whole width."""
    return 0 if len(table.header) >= _MANY_COLUMNS else INDENT


def table_xml(table: Table, runs: Callable[[tuple[Run, ...]], str], page: int) -> str:
    """The table without its caption; a caption between two keeps Word from joining them.

    ``page`` is the width between the margins, in twips.
    """
    room = page - indent(table)
    shares = table.widths or (1,) * len(table.header)
    widths = column_widths(shares, _longest_words(table), room)
    head = _row([run(text) for text in table.header], widths, "TableHead", header=True)
    kept = len(table.rows) - 1 if _is_short(table) else 0
    rows = [
        _row([runs(cell) for cell in row], widths, "TableText", keep=place < kept)
        for place, row in enumerate(table.rows)
    ]
    grid = "".join(f'<w:gridCol w:w="{width}"/>' for width in widths)
    return (
        f"<w:tbl>{_properties(table, room)}<w:tblGrid>{grid}</w:tblGrid>"
        f"{head}{''.join(rows)}</w:tbl>"
    )


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


def _longest_words(table: Table) -> list[int]:
    """Twips that the longest word of each column takes, with the padding of its cell."""
    return [
        _PADDING + _LETTER * max((len(word) for text in texts for word in text.split()), default=1)
        for texts in _columns(table)
    ]


def _columns(table: Table) -> Iterator[list[str]]:
    for index, title in enumerate(table.header):
        yield [title, *("".join(run.text for run in row[index]) for row in table.rows)]


def _is_short(table: Table) -> bool:
    longest = max((len(text) for texts in _columns(table) for text in texts), default=0)
    return len(table.rows) <= _SHORT and longest < _LONG


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
