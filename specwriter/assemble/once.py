"""What is the same on several areas is said once, with the names of the areas joined.

Clauses speak of one area after another; neighbouring sentences and lists that differ in nothing
but the name of the area become one.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field

from specwriter.assemble.document import Run
from specwriter.assemble.labels import area_name
from specwriter.assemble.page import CLOSING, MARK, OPENING, Page

ITEM = re.compile(r"\s*\d+\. ")
"""How an item of a list begins."""
_NO_SENTENCE = re.compile(r"\s*(?:\d+\. |\||>|Table:)")
_HOLE = f"{OPENING}area{CLOSING}"
"""Stands where the name of the area stood; no clause may hold its first character."""


@dataclass(slots=True)
class _Said:
    """A sentence, or a lead with its list: what it says, and the marks of its areas' names."""

    key: tuple[str, ...]
    lead: str
    items: list[str]
    names: list[str] = field(default_factory=list)


def said_once(text: str, page: Page) -> str:
    """The Markdown of a clause with equal statements on neighbouring areas made one."""
    return "\n".join(_Merger(text.split("\n"), page).lines())


@dataclass(slots=True)
class _Merger:
    source: list[str]
    page: Page
    open: dict[tuple[str, ...], _Said] = field(default_factory=dict)
    gap: bool = False
    """Whether a blank line stands after the open statements."""

    def lines(self) -> Iterator[str]:
        at = 0
        while at < len(self.source):
            said, after = self.statement(at)
            if said is not None:
                self.gap = False
                self.hold(said)
            elif self.open and not self.source[at].strip():
                self.gap = True
            else:
                yield from self.close()
                yield self.source[at]
            at = after
        yield from self.close()

    def hold(self, said: _Said) -> None:
        known = self.open.setdefault(said.key, said)
        if known is not said:
            known.names += said.names

    def close(self) -> Iterator[str]:
        """The statements of a run, each once; a list stands apart from what is around it."""
        for said in self.open.values():
            lead = said.lead.replace(_HOLE, self.joined(said.names))
            yield from ["", lead, "", *said.items, ""] if said.items else [lead]
        if self.open and self.gap:
            yield ""
        self.open.clear()

    def statement(self, at: int) -> tuple[_Said | None, int]:
        """The statement on one area that begins at a line, and the line after it."""
        line = self.source[at]
        names = [mark for mark in MARK.finditer(line) if self.is_name(mark)]
        if len(names) != 1 or _NO_SENTENCE.match(line):
            return None, at + 1
        lead = f"{line[: names[0].start()]}{_HOLE}{line[names[0].end() :]}"
        items, after = self.items(at + 1) if line.rstrip().endswith(":") else ([], at + 1)
        key = tuple(self.shown(text) for text in (lead, *items))
        return _Said(key, lead, items, [names[0][0]]), after

    def items(self, at: int) -> tuple[list[str], int]:
        """The list under a lead, and the line after it."""
        found: list[str] = []
        for after, line in enumerate(self.source[at:], at):
            if ITEM.match(line):
                found.append(line)
            elif line.strip():
                return found, after
        return found, len(self.source)

    def is_name(self, mark: re.Match[str]) -> bool:
        job = self.page.job
        return self.text(mark) in {area_name(job, key) for key in job.areas}

    def shown(self, line: str) -> str:
        """A line as it will read, so that equal values in different places are equal."""
        return MARK.sub(self.text, line)

    def text(self, mark: re.Match[str]) -> str:
        content = self.page.marked[int(mark[1])]
        runs = [item for item in content if isinstance(item, Run)]
        return "".join(run.text or f"{run.kind} {run.target}" for run in runs) or mark[0]

    def joined(self, names: Sequence[str]) -> str:
        """The marks of the names as in ``a, b and c``, each name once."""
        known = {self.shown(name): name for name in reversed(names)}
        *first, last = (name for name in dict.fromkeys(names) if known[self.shown(name)] == name)
        return f"{', '.join(first)} and {last}" if first else last
