"""Registers as CSV, one file each, and together as JSON."""

from __future__ import annotations

import csv
import io
import json
from collections.abc import Iterable

from specwriter.report.registers.register import Register
from specwriter.report.sentences import CAUTION

FORMAT = 1


def registers_csv(register: Register) -> bytes:
    """One register as CSV in UTF-8 with the mark by which spreadsheets know it.

    A cell that a spreadsheet would take for a formula gets an apostrophe before it.
    """
    text = io.StringIO(newline="")
    writer = csv.writer(text)
    writer.writerow(register.columns)
    writer.writerows([_plain(cell) for cell in row] for row in register.rows)
    return text.getvalue().encode("utf-8-sig")


def _plain(cell: str) -> str:
    return f"'{cell}" if cell[:1] in ("=", "+", "-", "@", "\t") else cell


def registers_json(registers: Iterable[Register]) -> bytes:
    """All registers as one JSON object: name → rows as objects."""
    made = {
        each.name: [dict(zip(each.columns, row, strict=True)) for row in each.rows]
        for each in registers
    }
    answer = {"format": FORMAT, "registers": made, "notice": CAUTION}
    return (json.dumps(answer, indent=2, ensure_ascii=False) + "\n").encode("utf-8")
