"""Changes inside a sentence: its words, and the values written in it."""

from __future__ import annotations

import re
from dataclasses import dataclass
from difflib import SequenceMatcher

from specwriter.quantity import Quantity, ValueFault, parse

DUTY_WORDS = frozenset(
    {"not", "no", "never", "none", "without", "unless", "except", "only"}
    | {"shall", "should", "must", "may", "will", "can"}
    | {"each", "every", "any", "all", "mean", "average", "minimum", "maximum", "least", "most"}
    | {"and", "or", "before", "after"}
)
"""Words on which a duty can turn: a change in one of them is pointed out."""

_WORD = re.compile(r"\w[\w./'-]*\w|\w|[^\w\s]")
_UNITS = r"percent|in/mi|m/km|in(?!\s+(?:each|every|the|a)\b)|ft|mi|mm|m|km|SY|m2|days|weeks|h|min"
_NUMBER = re.compile(
    r"(?<![\w./])(?:\d{1,3}(?:,\d{3})+|\d+)(?:\.\d+)?(?:-\d+/\d+|/\d+)?"
    rf"(?:\s*(?:{_UNITS}))?(?![\w/])"
)
_ORDINALS = ("second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth")
_EVERY = re.compile(rf"\b(every|each)\s+({'|'.join(_ORDINALS)})\b", re.I)
"""``every tenth joint`` counts joints as ``every 10 ft`` does feet."""

_LONGEST = 6
"""Runs of more changed words than this are left to the reader."""


@dataclass(frozen=True, slots=True)
class Numbers:
    """The values in a sentence, and the sentence without them."""

    frame: str
    values: tuple[Quantity, ...]


def numbers_in(text: str) -> Numbers:
    """The values written in a sentence; a number that cannot be read stays in the frame."""
    values: list[Quantity] = []

    def take(match: re.Match[str]) -> str:
        try:
            values.append(parse(match[0]))
        except ValueFault:
            return match[0]
        return "#"

    frame = " ".join(_NUMBER.sub(take, _EVERY.sub(_in_digits, text)).split())
    return Numbers(frame, tuple(values))


def _in_digits(match: re.Match[str]) -> str:
    return f"{match[1]} {_ORDINALS.index(match[2].lower()) + 2}"


def word_changes(old: str, new: str) -> tuple[str, str]:
    """The words that changed, in short, and a warning when a duty turns on one of them."""
    was, now = _WORD.findall(old), _WORD.findall(new)
    changes = [
        (" ".join(was[a:b]), " ".join(now[c:d]))
        for kind, a, b, c, d in SequenceMatcher(None, was, now, autojunk=False).get_opcodes()
        if kind != "equal"
    ]
    turned = [
        word
        for gone, come in changes
        for word in sorted(DUTY_WORDS & (set(gone.lower().split()) ^ set(come.lower().split())))
    ]
    warning = f"A duty may turn on {_quoted(turned)}." if turned else ""
    if any(len(text.split()) > _LONGEST for change in changes for text in change):
        return "", warning
    return "; ".join(_phrase(gone, come) for gone, come in changes), warning


def _phrase(gone: str, come: str) -> str:
    if not come:
        return f'"{gone}" is gone'
    return f'"{come}" is new' if not gone else f'"{gone}" became "{come}"'


def _quoted(words: list[str]) -> str:
    return ", ".join(f'"{word}"' for word in dict.fromkeys(words))
