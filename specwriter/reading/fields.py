"""Fields of a paragraph: what they show is its text, their instructions are not."""

from __future__ import annotations

import re
from dataclasses import dataclass

_PAGES = re.compile(r"\s*(?:PAGE|NUMPAGES|SECTIONPAGES)\b", re.I)


@dataclass(slots=True)
class _Field:
    instruction: str = ""
    shows: bool = False


class Fields:
    """The fields that are open at one place of a paragraph, the outermost first."""

    def __init__(self) -> None:
        self._open: list[_Field] = []

    @property
    def hides(self) -> bool:
        """True inside an instruction, and in what a count of pages shows."""
        return any(not each.shows or self.counts_pages(each.instruction) for each in self._open)

    def take(self, kind: str | None) -> str:
        """A begin, separator or end; gives the instruction of a count of pages at its end."""
        if kind == "begin":
            self._open.append(_Field())
        elif kind == "separate" and self._open:
            self._open[-1].shows = True
        elif kind == "end" and self._open:
            ended = self._open.pop()
            if self.counts_pages(ended.instruction) and not self.hides:
                return ended.instruction
        return ""

    def instruct(self, text: str) -> None:
        """A stretch of an instruction."""
        if self._open and not self._open[-1].shows:
            self._open[-1].instruction += text

    @staticmethod
    def counts_pages(instruction: str | None) -> bool:
        """Whether a field counts pages, which every program does anew."""
        return bool(instruction and _PAGES.match(instruction))
