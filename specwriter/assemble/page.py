"""One clause while it is being written: what is printed past Markdown, and what is missing.

Whatever comes from the job is put into the text as a numbered mark and exchanged for its run
after Markdown has been read. So a text of the job can never act as Markdown.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, field

from specwriter.assemble.document import Block, Run
from specwriter.assemble.labels import short_label
from specwriter.model import Job

OPENING, CLOSING = "\ue000", "\ue001"
MARK = re.compile(f"{OPENING}(\\d+){CLOSING}")

ABOVE = "table_above"
"""Target of a reference to the table that stands last above in the same clause."""

Marked = tuple[Run, ...] | tuple[Block, ...]
"""What a mark stands for."""

_SPACES = re.compile(r"\s+")


@dataclass(frozen=True, slots=True)
class Phrase:
    """A piece of text made of runs, with the paths whose values it prints or lacks."""

    runs: tuple[Run, ...]
    printed: tuple[str, ...] = ()
    missing: tuple[str, ...] = ()

    def __add__(self, other: Phrase) -> Phrase:
        return Phrase(
            self.runs + other.runs,
            self.printed + other.printed,
            self.missing + other.missing,
        )

    @property
    def text(self) -> str:
        """The characters of the phrase."""
        return "".join(run.text for run in self.runs)


def plain(text: str, *paths: str) -> Phrase:
    """A phrase of one plain run; line breaks and runs of spaces in it become one space."""
    return Phrase((Run(text=_SPACES.sub(" ", text)),), printed=paths)


def blank(path: str, text: str = "") -> Phrase:
    """The fill-in for a value that the job does not give."""
    return Phrase((Run(text=f"[{text or short_label(path)}]", kind="blank"),), missing=(path,))


@dataclass(slots=True)
class Page:
    """Collects the marks, the printed paths and the missing paths of one clause."""

    job: Job
    marked: list[Marked] = field(default_factory=list)
    printed: set[str] = field(default_factory=set)
    missing: dict[str, None] = field(default_factory=dict)

    def note(self, phrase: Phrase) -> tuple[Run, ...]:
        """Record what a phrase prints and lacks; its runs."""
        self.printed.update(phrase.printed)
        self.missing.update(dict.fromkeys(phrase.missing))
        return phrase.runs

    def mark(self, content: Marked) -> str:
        """The mark that stands for runs or blocks in the Markdown text."""
        self.marked.append(content)
        return f"{OPENING}{len(self.marked) - 1}{CLOSING}"
