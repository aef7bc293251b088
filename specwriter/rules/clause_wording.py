"""What the rules on wording have to say about the text of a clause."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass

from specwriter.rules.polarity import permitted
from specwriter.rules.word_list import uses

_SIGNS = (
    (
        re.compile(r"\band\s*/\s*or\b", re.IGNORECASE),
        "and/or has three readings",
        "write 'a and b', 'a or b', or 'a, b, or both'",
    ),
    (
        re.compile(r"\b(?:TB[ACD]|TODO|X{2,})\b|_{3,}|\?{2,}|\[[^\]]*\]"),
        "this is a placeholder",
        "write what is meant, or print a value of the job",
    ),
    (
        re.compile(r"</?[A-Za-z][^<>]*>"),
        "HTML would be printed as it stands",
        "leave it out; *word* and **word** mark a word",
    ),
    (
        re.compile(r"\bshall\b(?=.*\bmust\b)|\bmust\b(?=.*\bshall\b)", re.DOTALL),
        "the clause states duties with shall and with must",
        "write all of them in one way",
    ),
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Remark:
    """What is to be said about the words that begin at ``start``, counted from 0."""

    start: int
    says: str
    todo: str


def remarks(text: str) -> Iterator[Remark]:
    """Flagged words, signs of an unfinished text, and permissions that have lost their not."""
    for use in uses(text):
        says = f"'{use.words}': {use.flag.reason}"
        yield Remark(start=use.start, says=says, todo=f"write {use.flag.better}")
    for pattern, says, todo in _SIGNS:
        if found := pattern.search(text):
            yield Remark(start=found.start(), says=says, todo=todo)
    for sense, sentence in permitted(text):
        says = f"this permits {sense.name}"
        todo = "look whether a 'not' has been lost"
        yield Remark(start=text.index(sentence), says=says, todo=todo)
