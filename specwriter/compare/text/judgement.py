"""Which way a change of text goes, as far as its values and words of duty say so."""

from __future__ import annotations

import re
from dataclasses import replace

from specwriter.compare.change import Sense
from specwriter.compare.duty import modal_sense
from specwriter.compare.meaning import Bare
from specwriter.compare.sense import Judgement, judge_values
from specwriter.compare.text.cautions import cautions
from specwriter.compare.text.changes import TextChange
from specwriter.compare.wording import numbers_in, word_changes
from specwriter.quantity import ValueFault, parse

_AT_MOST = re.compile(
    r"(at most|no more than|not more than|not exceed|maximum|within|less than|up to)\W*$", re.I
)
_AT_LEAST = re.compile(r"(at least|no less than|not less than|minimum|exceed|more than)\W*$", re.I)
_REFUSED = re.compile(r"not (exceed|more than)\W*$", re.I)
_CONVERSION = re.compile(r"\s*\([^()]*\)")
_NEAR = 40
_SENSES = {
    "added": Sense.ADDED,
    "row added": Sense.ADDED,
    "removed": Sense.REMOVED,
    "row removed": Sense.REMOVED,
    "moved": Sense.MOVED,
}


def judge_text(change: TextChange) -> Judgement:
    """The sense of a change of text, with a warning of what is easily read over.

    ``REWORDED`` when only words differ, or nothing can tell.
    """
    judged = _judged(change)
    if change.kind == "moved" or change.follows:
        return judged
    said = [judged.warning, *cautions(change.old, change.new)]
    return replace(judged, warning=" ".join(dict.fromkeys(filter(None, said))))


def _judged(change: TextChange) -> Judgement:
    if change.kind in _SENSES:
        return Judgement(_SENSES[change.kind])
    if change.follows:
        return Judgement(Sense.RESTATED, "a reference follows the new number")
    old, new = change.old, change.new
    if " ".join(old.split()).casefold() == " ".join(new.split()).casefold():
        return Judgement(Sense.RESTATED, "only spaces or capitals differ")
    words, warning = word_changes(old, new)
    if modal := modal_sense(old, new):
        return Judgement(modal[0], modal[2], warning, modal[1])
    return (
        _as_one_value(old, new) or _by_values(old, new) or Judgement(Sense.REWORDED, words, warning)
    )


def _as_one_value(old: str, new: str) -> Judgement | None:
    """The sense of a cell that holds one value and nothing else, conversions in brackets aside."""
    try:
        was, now = (parse(_CONVERSION.sub("", text).strip()) for text in (old, new))
    except ValueFault:
        return None
    return None if was.text == now.text else judge_values(was, now, "unordered")


def _by_values(old: str, new: str) -> Judgement | None:
    """The sense of a sentence in which only written values differ."""
    was, now = numbers_in(old), numbers_in(new)
    if was.frame != now.frame or not was.values:
        return None
    frames = was.frame.split("#")
    judged = [
        judge_values(a, b, _bare("".join(frames[: place + 1])[-_NEAR:]))
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


def _bare(before: str) -> Bare:
    """How a value is meant by the words right before it."""
    if _AT_MOST.search(before) or _REFUSED.search(before):
        return "at_most"
    return "at_least" if _AT_LEAST.search(before) else "unordered"
