"""Documents somebody else may have written → blocks of text, with what the file says of them."""

from specwriter.reading.block import (
    Block,
    Cell,
    Margin,
    Paragraph,
    Piece,
    Row,
    State,
    Table,
    Text,
    with_plain_hyphens,
)
from specwriter.reading.fault import ReadingFault
from specwriter.reading.inside import JobInside, job_inside, provision_lines
from specwriter.reading.plain import read_plain
from specwriter.reading.word import read_word

__all__ = [
    "Block",
    "Cell",
    "JobInside",
    "Margin",
    "Paragraph",
    "Piece",
    "ReadingFault",
    "Row",
    "State",
    "Table",
    "Text",
    "job_inside",
    "provision_lines",
    "read_plain",
    "read_word",
    "with_plain_hyphens",
]
