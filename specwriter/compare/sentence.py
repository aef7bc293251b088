"""Which way a sentence goes when nothing but the values written in it differ."""

from __future__ import annotations

import re

from specwriter.compare.change import Sense
from specwriter.compare.meaning import Bare
from specwriter.compare.values import Judgement, judge_values
from specwriter.compare.wording import numbers_in

_AT_MOST = re.compile(
    r"(at most|no more than|not more than|not exceed|maximum|within|less than|up to)\W*$", re.I
)
_AT_LEAST = re.compile(r"(at least|no less than|not less than|minimum|exceed|more than)\W*$", re.I)
_REFUSED = re.compile(r"not (exceed|more than)\W*$", re.I)
_NEAR = 40
"""Characters before a value among which its limit word is looked for."""


def judge_numbers(old: str, new: str, bare: Bare) -> Judgement | None:
    """The sense of a sentence in which only written values differ, else ``None``.

    ``bare`` says how a value is read that has no limit word right before it.
    """
    was, now = numbers_in(old), numbers_in(new)
    if was.frame != now.frame:
        return None
    frames = was.frame.split("#")
    judged = [
        judge_values(a, b, _bare("".join(frames[: place + 1])[-_NEAR:], bare))
        for place, (a, b) in enumerate(zip(was.values, now.values, strict=True))
        if a.text != b.text
    ]
    if not judged:
        return None
    senses = {each.sense for each in judged} - {Sense.RESTATED} or {Sense.RESTATED}
    return Judgement(
        senses.pop() if len(senses) == 1 else Sense.MIXED,
        "; ".join(each.difference for each in judged if each.difference),
        " ".join(each.warning for each in judged if each.warning),
    )


def _bare(before: str, otherwise: Bare) -> Bare:
    """How a value is meant by the words right before it."""
    if _AT_MOST.search(before) or _REFUSED.search(before):
        return "at_most"
    return "at_least" if _AT_LEAST.search(before) else otherwise
