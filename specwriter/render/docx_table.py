"""A table → WordprocessingML: ruled, its header repeated, no row torn over two pages."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence

from specwriter.assemble.document import Run, Table
from specwriter.render.docx_page import INDENT
from specwriter.render.docx_xml import paragraph, run, xml_text

_MANY_COLUMNS = 6
_SHORT = 16
"""A table of up to so many lines stays on one page."""

_PADDING = 160
"""Twips that a cell keeps free on its left and right, as style Grid says."""

_LETTER = 118
"""Twips that a letter of a bold word takes on the average at 9.5 points; found by trial."""

_NARROW = 98
"""The same for the letters of running text."""

_VALUE = 14
"""A cell that begins with a digit and has so many letters at most stays on one line."""


def indent(table: Table) -> int:
    """Twips from the margin to the table; a table of many columns takes the whole width."""
    return 0 if len(table.header) >= _MANY_COLUMNS else INDENT


def table_xml(table: Table, runs: Callable[[tuple[Run, ...]], str], page: int) -> str:
    """The table without its caption; a caption between two keeps Word from joining them.

    ``page`` is the width between the margins, in twips.
    """
    room = page - indent(table)
    widths = _best_widths(table, room)
    head = _row([run(text) for text in table.header], widths, "TableHead", header=True)
    last = len(table.rows) - 1
    short = _lines(table, widths) <= _SHORT
    rows = [
        # The first two rows stay together, and the last two.
        _row(
            [runs(cell) for cell in row],
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


def _best_widths(table: Table, room: int) -> tuple[int, ...]:
    """The widths that the table names; else of a few ways to share the room the lowest table."""
    least = _longest_words(table)
    if table.widths:
        return column_widths(table.widths, least, room)
    tries = [column_widths(shares, least, room) for shares in _shares(table)]
    return min(tries, key=lambda widths: _lines(table, widths))


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
        _PADDING + _LETTER * max((len(word) for text in texts for word in _words(text)), default=1)
        for texts in _columns(table)
    ]


def _words(text: str) -> list[str]:
    """What a line must not break: each word, and a short value with its unit."""
    return [text] if text[:1].isdigit() and len(text) <= _VALUE else text.split()


def _columns(table: Table) -> Iterator[list[str]]:
    for index, title in enumerate(table.header):
        yield [title, *("".join(run.text for run in row[index]) for row in table.rows)]


def _shares(table: Table) -> Iterator[list[int]]:
    """Shares by the letters of each column, long cells counting more: they make a row tall."""
    squares = [sum(len(text) ** 2 for text in texts) + 1 for texts in _columns(table)]
    for power in (0.5, 0.4, 0.3, 0.2):
        yield [round(100 * each**power) for each in squares]


def _lines(table: Table, widths: Sequence[int]) -> int:
    """Lines that the rows take, about."""
    rooms = [max((width - _PADDING) // _NARROW, 1) for width in widths]
    return sum(
        max(-(-_length(cell) // room) for cell, room in zip(row, rooms, strict=True))
        for row in table.rows
    )


def _length(cell: tuple[Run, ...]) -> int:
    return sum(len(run.text) for run in cell)


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
