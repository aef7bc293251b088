"""Which way a change of text goes, as far as its values and words of duty say so."""

from __future__ import annotations

import re
from dataclasses import replace

from specwriter.compare.change import Sense
from specwriter.compare.duty import modal_sense
from specwriter.compare.sentence import judge_numbers
from specwriter.compare.text.cautions import cautions
from specwriter.compare.text.changes import TextChange
from specwriter.compare.values import Judgement, judge_values
from specwriter.compare.wording import word_changes
from specwriter.quantity import ValueFault, parse

_CONVERSION = re.compile(r"\s*\([^()]*\)")
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
    if change.kind in ("moved", "look") or change.follows:
        return judged
    said = [judged.warning, *cautions(change.old, change.new)]
    return replace(judged, warning=" ".join(dict.fromkeys(filter(None, said))))


def _judged(change: TextChange) -> Judgement:
    if change.kind in _SENSES:
        return Judgement(_SENSES[change.kind])
    if change.kind == "look":
        return Judgement(Sense.RESTATED, "only the look differs")
    if change.follows:
        return Judgement(Sense.RESTATED, "a reference follows the new number")
    old, new = change.old, change.new
    if " ".join(old.split()).casefold() == " ".join(new.split()).casefold():
        return Judgement(Sense.RESTATED, "only spaces or capitals differ")
    words, warning = word_changes(old, new)
    if modal := modal_sense(old, new):
        return Judgement(modal[0], modal[2], warning, modal[1])
    return (
        _as_one_value(old, new)
        or judge_numbers(old, new, "unordered")
        or Judgement(Sense.REWORDED, words, warning)
    )


def _as_one_value(old: str, new: str) -> Judgement | None:
    """The sense of a cell that holds one value and nothing else, conversions in brackets aside."""
    try:
        was, now = (parse(_CONVERSION.sub("", text).strip()) for text in (old, new))
    except ValueFault:
        return None
    return None if was.text == now.text else judge_values(was, now, "unordered")
