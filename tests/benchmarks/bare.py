"""Texts written into paragraphs and tables with bare python-docx, on its own template.

::

    python -m tests.benchmarks.bare TEXTS.json FILE.docx
"""

from __future__ import annotations

import io
import json
import sys
from pathlib import Path

import docx

Row = list[str]
Blocks = list[str | list[Row]]


def write(blocks: Blocks) -> bytes:
    """The blocks as a Word file without styles, numbers, fields and figures."""
    file = docx.Document()
    for block in blocks:
        if isinstance(block, str):
            file.add_paragraph(block)
            continue
        table = file.add_table(rows=len(block), cols=len(block[0]))
        for row, texts in zip(table.rows, block, strict=True):
            for cell, text in zip(row.cells, texts, strict=True):
                cell.text = text
    buffer = io.BytesIO()
    file.save(buffer)
    return buffer.getvalue()


if __name__ == "__main__":
    _, given, made = sys.argv
    Path(made).write_bytes(write(json.loads(Path(given).read_text(encoding="utf-8"))))
