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
_THING = r"(?:surface|area|strip|gap|pavement|concrete)s?"
_SURFACE = (
    rf"(?:{_BARE}{_THING}|{_THING}\s+(?:left\s+)?(?:unground|uncut|ungrooved|untextured|bare)"
    r"|holidays? between)"
)
_LIQUID = r"(?:the\s+)?(?:residue|slurry)"
_GOES = r"(?:flow|run|drain|enter|reach|be\s+discharged)"
_PLACES = (
    r"(?:gutter|drain|inlet|catch\s+basin|sewer|ditch|stream|creek|river|waterway|wetland"
    r"|open\s+lane|lane\s+in\s+use)s?"
)
_PUT = r"(?:discharge|wash|flush|sweep|blow|pump|drain)s?"
_FEW = r"(?:\s+\w+){0,4}?\s+"
_IS_ALLOWED = (
    r"(?:(?:shall|will|may|must)\s+)?(?:is|are|be)\s+"
    r"(?:allowed|permitted|tolerated|acceptable|accepted)"
)
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
            rf"leave\s+(?:\w+\s+){{0,2}}?{_SURFACE}\s+between\s+(?:the\s+)?passes",
        ),
        but_for=_ELSEWHERE,
    ),
    Sense(
        name="residue that flows to drains or open lanes",
        pattern=_any_of(
            rf"{_ALLOW}{_LIQUID}\s+to\s+{_GOES}\b[^.;:]*\b{_PLACES}",
            rf"{_LIQUID}\s+{_IS_ALLOWED}\s+to\s+{_GOES}\b[^.;:]*\b{_PLACES}",
            rf"{_LIQUID}\s+(?:may|can)\s+{_GOES}\b[^.;:]*\b{_PLACES}",
            rf"let\s+{_LIQUID}\s+{_GOES}\b[^.;:]*\b{_PLACES}",
            rf"{_PUT}\s+{_LIQUID}\s+(?:in)?to\s+(?:\w+\s+){{0,3}}?{_PLACES}",
        ),
    ),
    Sense(
        name="traffic on the residue",
        pattern=_any_of(
            r"open\w*\s[^.;:]*\b(?:lane|traffic)\b[^.;:]*\b(?:while|before)\s+" + _LIQUID,
            rf"traffic\s+(?:may|can)\s+\w+\s+(?:on|over|through)\s+{_LIQUID}",
        ),
    ),
)
"""What Maryland 509 (undated, as stored) permits by a lost negative, and its like."""

_BESIDE = r"[^.;:]*\b(?:shoulder|slope|roadside|median|right[\s-]of[\s-]way)s?"
_SPREAD = _any_of(
    rf"spread\s+{_LIQUID}{_BESIDE}",
    rf"{_LIQUID}\s+(?:(?:may|can|is\s+to)\s+be|is)\s+spread{_BESIDE}",
)
"""What a contract that has its residue hauled forbids."""


def says_spread(text: str) -> int | None:
    """Where a text lets residue be spread beside the road, counted from 0; else ``None``."""
    found = _SPREAD.search(text)
    return None if found is None or _NEGATION.search(text) else found.start()


def permitted(text: str) -> Iterator[tuple[Sense, str]]:
    """What a text permits that no provision permits, with the sentence that does it."""
    for sentence in re.split(r"(?<=[.;])\s+", text):
        if _NEGATION.search(sentence):
            continue
        for sense in SENSES:
            elsewhere = sense.but_for is not None and sense.but_for.search(sentence)
            if sense.pattern.search(sentence) and not elsewhere:
                yield sense, sentence
