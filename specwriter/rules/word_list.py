"""The flagged words of the house (``clauses/wording.yaml``), and where a text uses them."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from functools import cache
from pathlib import Path
from typing import Any

from specwriter.diagnostic import Evidence
from specwriter.model import Job
from specwriter.rules.texts import entries, texts


@dataclass(frozen=True, slots=True, kw_only=True)
class Flag:
    """Words that say the same too little, why, and what says it better.

    ``unless`` holds longer phrases in which the words are right.
    """

    words: tuple[str, ...]
    kind: str
    reason: str
    better: str
    unless: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Use:
    """A flagged word in a text, as it stands there; ``start`` counts characters from 0."""

    flag: Flag
    words: str
    start: int


@cache
def flags() -> tuple[Flag, ...]:
    """Every entry of the list, in its order."""
    import yaml

    # Safe: the file is part of the program, and the loader makes plain data alone.
    entries: list[dict[str, Any]] = yaml.safe_load(_file().read_text("utf-8"))
    return tuple(_flag(**each) for each in entries)


def _flag(
    words: list[str], kind: str, reason: str, better: str, unless: Iterable[str] = ()
) -> Flag:
    return Flag(words=tuple(words), kind=kind, reason=reason, better=better, unless=tuple(unless))


def _file() -> Path:
    """Inside the installed package, else in the folder of clauses beside it."""
    package = Path(__file__).parents[1]
    inside = package / "clauses" / "wording.yaml"
    return inside if inside.is_file() else package.parent / "clauses" / "wording.yaml"


def uses(text: str, kinds: tuple[str, ...] = ()) -> Iterator[Use]:
    """The flagged words in a text, of some kinds or of all; of two that overlap the longer."""
    pattern, by_words = _pattern()
    for found in pattern.finditer(text):
        flag = by_words[plain(found.group())]
        if flag is not None and (not kinds or flag.kind in kinds):
            yield Use(flag=flag, words=found.group(), start=found.start())


def plain(words: str) -> str:
    """Words as the list holds them: lower case, one space between them, a straight apostrophe."""
    return " ".join(re.split(r"[\s-]+", words.lower().replace("’", "'")))


@cache
def _pattern() -> tuple[re.Pattern[str], dict[str, Flag | None]]:
    """The words of the list with their entries; phrases in which they are right have none."""
    listed: dict[str, Flag | None] = {words: each for each in flags() for words in each.words}
    listed |= dict.fromkeys(words for each in flags() for words in each.unless)
    longest_first = sorted(listed, key=len, reverse=True)
    choices = "|".join(map(_choice, longest_first))
    by_words = {plain(words.removesuffix(_NUMBER)): flag for words, flag in listed.items()}
    return re.compile(rf"(?<![\w-])(?:{choices})(?![\w-])", re.IGNORECASE), by_words


_NUMBER = " #"


def _choice(words: str) -> str:
    """A pattern of words; what stands for a number is looked at and not taken."""
    own = re.escape(words.removesuffix(_NUMBER)).replace(r"\ ", r"[\s-]+").replace("'", "['’]")
    return own + (r"(?=\s+\.?\d)" if words.endswith(_NUMBER) else "")


def flagged(
    job: Job, kinds: tuple[str, ...], *, names: bool = False
) -> dict[str, tuple[Flag, list[Evidence]]]:
    """Each flagged word of some kinds, lower case, with its entry and where texts use it.

    With ``names`` every entry that a person wrote is looked at, such as the edition of a method.
    """
    found: dict[str, tuple[Flag, list[Evidence]]] = {}
    for text in entries(job) if names else texts(job):
        for use in uses(text.words, kinds):
            _, places = found.setdefault(plain(use.words), (use.flag, []))
            if text.path not in [each.path for each in places]:
                places.append(text.evidence(use.start))
    return found
