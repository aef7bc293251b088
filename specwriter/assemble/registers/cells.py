"""Cells of tables that code builds."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from specwriter.assemble.document import Run, Table
from specwriter.assemble.page import Page, Phrase, plain
from specwriter.assemble.view import View
from specwriter.assemble.wording import both, written
from specwriter.model import Job

NONE = Phrase((Run(text="–"),))
"""Nothing is required here; not to be mistaken for a blank."""

Row = Sequence[Phrase]


def value(found: Any, job: Job) -> Phrase:
    """A quantity in both unit systems, a text as written, a blank for what is absent."""
    return both(found, job.project)


def after(lead: str, phrase: Phrase) -> Phrase:
    """A phrase with words before it."""
    return plain(lead) + phrase


def key(view: View, name: str) -> Phrase:
    """What stands under a key, as written."""
    return written(view.read(name))


def table(
    page: Page,
    name: str,
    caption: str,
    header: Sequence[str],
    rows: Sequence[Row],
) -> Table:
    """A table, its values noted on the page."""
    return Table(
        id=name,
        number=0,
        caption=caption,
        header=tuple(header),
        rows=tuple(tuple(page.note(cell) for cell in row) for row in rows),
    )
