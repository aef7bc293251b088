"""Sentences that permit what a provision forbids: mostly a "not" that was lost in editing."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass

_NEGATION = re.compile(
    r"\b(?:not?|never|none|nothing|neither|nor|without|forbidden|prohibit\w*|avoid|prevent\w*|"
    r"cannot|unless|except|refus\w*|reject\w*)\b|n't\b",
    re.IGNORECASE,
)
_ELSEWHERE = re.compile(
    r"\b(?:casting|frame|joint|kerb|curb|edge|loop|fixture|light|manhole|barrier)s?\b",
    re.IGNORECASE,
)
"""Places at which bare surface is commonly left."""

_BARE = r"(?:unground|uncut|ungrooved|untextured|bare)\s+(?:\w+\s+){0,2}?"
_THING = r"(?:surface|area|strip|pavement|concrete)s?"
_SURFACE = (
    rf"(?:{_BARE}{_THING}|{_THING}\s+(?:left\s+)?(?:unground|uncut|ungrooved|untextured|bare)"
    r"|holidays? between)"
)
_LIQUID = r"(?:the\s+)?(?:residue|slurry)"
_GOES = r"(?:flow|run|drain|enter|be\s+discharged)"
_PLACES = r"(?:gutter|drain|inlet|ditch|stream|open\s+lane|lane\s+in\s+use|wetland)s?"
_FEW = r"(?:\s+\w+){0,4}?\s+"
_IS_ALLOWED = r"(?:is|are|be)\s+(?:allowed|permitted|tolerated|acceptable|accepted)"
_ALLOW = r"(?:allow|permit|accept|tolerate)s?\s+"


@dataclass(frozen=True, slots=True, kw_only=True)
class Sense:
    """Something no provision permits: its name, and the ways in which a text permits it."""

    name: str
    pattern: re.Pattern[str]
    but_for: re.Pattern[str] | None = None


def _any_of(*ways: str) -> re.Pattern[str]:
    return re.compile("|".join(rf"\b{way}\b" for way in ways), re.IGNORECASE)


SENSES = (
    Sense(
        name="unground surface between passes",
        pattern=_any_of(
            rf"{_ALLOW}(?:\w+\s+){{0,3}}?{_SURFACE}",
            rf"{_SURFACE}{_FEW}{_IS_ALLOWED}",
            rf"{_SURFACE}{_FEW}(?:may|can)\s+(?:remain|stay|be\s+left|exist|occur)",
        ),
        but_for=_ELSEWHERE,
    ),
    Sense(
        name="residue that flows to drains or open lanes",
        pattern=_any_of(
            rf"{_ALLOW}{_LIQUID}\s+to\s+{_GOES}\b[^.;:]*\b{_PLACES}",
            rf"{_LIQUID}\s+{_IS_ALLOWED}\s+to\s+{_GOES}\b[^.;:]*\b{_PLACES}",
            rf"{_LIQUID}\s+(?:may|can)\s+{_GOES}\b[^.;:]*\b{_PLACES}",
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
            elsewhere = sense.but_for is not None and sense.but_for.search(sentence)
            if sense.pattern.search(sentence) and not elsewhere:
                yield sense, sentence
