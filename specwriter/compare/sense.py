"""Which way a change goes: values by the ranges they allow, choices by a table, text by words."""

from __future__ import annotations

import re

from specwriter.compare.change import Sense
from specwriter.compare.duty import modal_sense, pay_reading, remedy_sense
from specwriter.compare.leaf import Leaf
from specwriter.compare.meaning import (
    ORDERED_CHOICES,
    PRESENCE,
    REMEDIES,
    UNKNOWN_WHEN_CHANGED,
    entry_of,
    lookup,
)
from specwriter.compare.sentence import judge_numbers
from specwriter.compare.values import Judgement, judge_values
from specwriter.compare.wording import word_changes
from specwriter.model import Node
from specwriter.quantity import Quantity

Key = tuple[str, ...]

_JOINTS = re.compile(r"[,;]| and ")
"""Between the places of an exclusion."""


def judge(key: Key, old: Leaf | Node | None, new: Leaf | Node | None) -> Judgement | None:
    """How the place ``key`` changed, or ``None`` when both sides say the same, letter by letter."""
    added, removed = entry_of(PRESENCE, key) or (Sense.ADDED, Sense.REMOVED)
    if old is None:
        return Judgement(added)
    if new is None:
        return Judgement(removed)
    if not (isinstance(old, Leaf) and isinstance(new, Leaf)):
        return Judgement(Sense.MOVED)
    if old.written == new.written:
        return None
    if key[-1] == "order":
        return Judgement(Sense.MOVED, warning="The steps of the work follow in another order.")
    if isinstance(old.value, Quantity) and isinstance(new.value, Quantity):
        return judge_values(old.value, new.value, lookup(key).bare)
    return _judge_words(key, old, new)


def _judge_words(key: Key, old: Leaf, new: Leaf) -> Judgement:
    was, now = old.written, new.written
    for looser, tighter in entry_of(ORDERED_CHOICES, key) or ():
        if (was, now) == (looser, tighter):
            return Judgement(Sense.TIGHTER)
        if (was, now) == (tighter, looser):
            return Judgement(Sense.LOOSER)
    if key[-1] in UNKNOWN_WHEN_CHANGED:
        return Judgement(Sense.UNKNOWN, warning=f"Another {key[-1]} may ask for something else.")
    if key[-1] not in REMEDIES and _is_choice(was) and _is_choice(now):
        return Judgement(Sense.CHANGED)
    if " ".join(was.split()).casefold() == " ".join(now.split()).casefold():
        return Judgement(Sense.RESTATED, "only spaces or capitals differ")
    return _judge_text(key, was, now)


def _is_choice(text: str) -> bool:
    """True for a single word such as ``mean_and_each``: a choice, not a sentence."""
    return " " not in text


def _judge_text(key: Key, old: str, new: str) -> Judgement:
    """A sentence: by its words of duty, by its numbers when only numbers differ, else by words."""
    words, warning = word_changes(old, new)
    if modal := modal_sense(old, new):
        return Judgement(modal[0], modal[2], warning, modal[1])
    if key[-1] in REMEDIES and (harsher := remedy_sense(old, new)):
        return Judgement(harsher[0], "; ".join(filter(None, (harsher[1], words))), warning)
    if key[-1] == "exclusions" and (sense := _sense_of_parts(old, new)):
        return Judgement(sense, words, warning)
    bare = pay_reading(old) if key[-1] in REMEDIES else lookup(key).bare
    return judge_numbers(old, new, bare) or Judgement(Sense.REWORDED, words, warning)


def _sense_of_parts(old: str, new: str) -> Sense | None:
    """Tighter when only some of the places left out stay out, looser when others join them."""
    was, now = ({each.strip() for each in _JOINTS.split(text.casefold())} for text in (old, new))
    if now < was:
        return Sense.TIGHTER
    return Sense.LOOSER if was < now else None
