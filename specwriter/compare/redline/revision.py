"""The marks of a tracked change: who made it, when, and a number of its own."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import count
from typing import Literal
from xml.sax.saxutils import quoteattr

Change = Literal["ins", "del", "moveFrom", "moveTo"]


@dataclass(frozen=True, slots=True, kw_only=True)
class Author:
    """Whose name the changes bear, and the date they bear (``2027-03-15``); empty for none."""

    name: str
    date: str = ""


class Revisions:
    """Makes the marks of one document, each with another number."""

    def __init__(self, author: Author) -> None:
        self._who = f" w:author={quoteattr(author.name)}"
        if author.date:
            moment = author.date if "T" in author.date else f"{author.date}T00:00:00Z"
            self._who += f" w:date={quoteattr(moment)}"
        self._numbers = count(1)

    def mark(self, change: Change) -> str:
        """An empty mark, for the end of a paragraph or for a row."""
        return f'<w:{change} w:id="{next(self._numbers)}"{self._who}/>'

    def around(self, change: Change, runs: str) -> str:
        """Runs that come or go; nothing around nothing."""
        if not runs:
            return ""
        return f'<w:{change} w:id="{next(self._numbers)}"{self._who}>{runs}</w:{change}>'

    def settings(self, before: str) -> str:
        """How a paragraph was set before, as the properties that it had."""
        inner = f"<w:pPr>{before}</w:pPr>"
        return f'<w:pPrChange w:id="{next(self._numbers)}"{self._who}>{inner}</w:pPrChange>'

    def look(self, before: str) -> str:
        """How a run looked before, as the form that it had."""
        inner = f"<w:rPr>{before}</w:rPr>"
        return f'<w:rPrChange w:id="{next(self._numbers)}"{self._who}>{inner}</w:rPrChange>'

    def move(self, side: Literal["moveFrom", "moveTo"], number: int) -> tuple[str, str]:
        """What stands before and behind the blocks of one side of a move."""
        id = next(self._numbers)
        start = f'<w:{side}RangeStart w:id="{id}" w:name="move{number}"{self._who}/>'
        return start, f'<w:{side}RangeEnd w:id="{id}"/>'
