"""What reports as web pages share: the frame, the style, tables with their heads; all escaped."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from html import escape
from pathlib import Path
from typing import NamedTuple


class Marked(NamedTuple):
    """A cell with a word for its look; the look never says more than the text."""

    text: str
    look: str


Cell = str | Marked


def web_page(title: str, body: Iterable[str], style: str) -> str:
    """A page that stands alone; ``style`` names the file with what only this report needs."""
    sheets = "".join(
        Path(__file__).with_name(name).read_text(encoding="utf-8")
        for name in ("web_page.css", style)
    )
    inner = "\n".join(body)
    return (
        '<!DOCTYPE html>\n<html lang="en">\n<head>\n<meta charset="utf-8">\n'
        '<meta name="viewport" content="width=device-width, initial-scale=1">\n'
        f"<title>{escape(title)}</title>\n<style>\n{sheets}</style>\n</head>\n"
        f"<body>\n<main>\n{inner}\n</main>\n</body>\n</html>\n"
    )


def element(tag: str, text: str, look: str = "") -> str:
    """An element of one text."""
    attribute = f' class="{look}"' if look else ""
    return f"<{tag}{attribute}>{escape(text)}</{tag}>"


def bullets(items: Iterable[str]) -> str:
    """A list; nothing when there are no items."""
    inner = "".join(element("li", item) for item in items)
    return f"<ul>{inner}</ul>" if inner else ""


def rows_table(
    caption: str,
    header: Sequence[str],
    rows: Iterable[Sequence[Cell]],
    *,
    named: int | None = None,
    look: str = "rows",
) -> str:
    """A table with its caption; nothing when it has no rows. The column ``named`` names each row.

    On a narrow screen each row is a card; then every cell says of itself what it is of.
    """
    lines = [
        "".join(_cell(of, cell, column == named) for column, (of, cell) in enumerate(pairs))
        for pairs in (zip(header, row, strict=True) for row in rows)
    ]
    if not lines:
        return ""
    head = "".join(f'<th scope="col">{escape(cell)}</th>' for cell in header)
    body = "\n".join(f"<tr>{line}</tr>" for line in lines)
    return (
        f'<table class="{look}">\n'
        f"<caption>{escape(caption)}</caption>\n<thead><tr>{head}</tr></thead>\n"
        f"<tbody>\n{body}\n</tbody>\n</table>"
    )


def _cell(of: str, cell: Cell, is_name: bool) -> str:
    text, look = (cell, "") if isinstance(cell, str) else cell
    opening = 'th scope="row"' if is_name else "td"
    look = f' class="{look}"' if look else ""
    closing = "th" if is_name else "td"
    return f'<{opening} data-of="{escape(of)}"{look}>{escape(text)}</{closing}>'
