"""Sentences that permit what a provision forbids: mostly a "not" that was lost in editing."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass

_PERMITS = r"(?:allow(?:ed|s)?|permit(?:ted|s)?|may|can|acceptable|tolerated|is to|are to)"
_NEGATION = re.compile(
    r"\b(?:not?|never|none|nothing|neither|nor|without|forbidden|prohibit\w*|avoid|prevent\w*|"
    r"cannot|unless|except|refus\w*|reject\w*)\b|n't\b",
    re.IGNORECASE,
)
_BARE = r"(?:unground|uncut|ungrooved|untextured|bare)"
_PLACES = r"(?:gutter|drain|inlet|ditch|stream|open lane|lane in use|travel(?:led)? lane|wetland)s?"


@dataclass(frozen=True, slots=True, kw_only=True)
class Sense:
    """Something no provision permits: its name, and the two orders in which a text permits it."""

    name: str
    pattern: re.Pattern[str]


def _either(thing: str) -> re.Pattern[str]:
    """Permission before or after the thing, in one clause of a sentence."""
    return re.compile(
        rf"\b(?:{_PERMITS}\b[^.;:]*\b{thing}|{thing}\b[^.;:]*\b{_PERMITS})\b", re.IGNORECASE
    )


SENSES = (
    Sense(
        name="unground surface between passes",
        pattern=_either(rf"{_BARE}\s+(?:\w+\s+){{0,2}}?(?:surface|area|strip|pavement|concrete)s?"),
    ),
    Sense(
        name="residue that flows to drains or open lanes",
        pattern=re.compile(
            rf"\b(?:residue|slurry|water)\b[^.;:]*\b{_PERMITS}\b[^.;:]*\b(?:flow|run|drain|enter|"
            rf"discharge)\w*\b[^.;:]*\b{_PLACES}\b|\b{_PERMITS}\b[^.;:]*\b(?:residue|slurry)\b"
            rf"[^.;:]*\b(?:flow|run|drain|enter|discharge)\w*\b[^.;:]*\b{_PLACES}\b",
            re.IGNORECASE,
        ),
    ),
)
"""What Maryland 509 (undated, as stored) permits by a lost negative, and its like."""


def permitted(text: str) -> Iterator[tuple[Sense, str]]:
    """What a text permits that no provision permits, with the sentence that does it."""
    for sentence in re.split(r"(?<=[.;])\s+", text):
        if _NEGATION.search(sentence):
            continue
        for sense in SENSES:
            if sense.pattern.search(sentence):
                yield sense, sentence
