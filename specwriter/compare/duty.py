"""Words on which a duty turns: should and shall, may and will, and how harsh a remedy is.

The order of the words is common usage of specifications; the scale of remedies is common
practice, no source.
"""

from __future__ import annotations

import re
from difflib import SequenceMatcher

from specwriter.compare.burden import Burden
from specwriter.compare.change import Sense
from specwriter.compare.meaning import Bare

_MODALS = {"may": 0, "can": 0, "should": 1, "will": 2, "shall": 2, "must": 2}
_AGENCY = re.compile(
    r"\b(agency|engineer|department|owner|inspector|authority|administration)\b", re.I
)
_WORD = re.compile(r"\w+")

_REMEDIES: tuple[tuple[int, str, re.Pattern[str]], ...] = (
    (3, "removal and replacement", re.compile(r"\b(remove|removal|replace|reconstruct)", re.I)),
    (
        2,
        "correction",
        re.compile(r"\b(correct|(re)?(saw|cut|grind|groove)|repair|redo|rework|reset)", re.I),
    ),
    (1, "a cut in pay", re.compile(r"\b(pay|paid|price|deduct|reduc|percent|\$)", re.I)),
)
_CUT = re.compile(r"\b(cut|deduct|reduc|with(hold|held)|penalt|less)", re.I)
_PAID = re.compile(r"\b(price|paid|pays?)\b", re.I)
_NONE = re.compile(r"^\s*(none|no remedy|no effect|accepted as is)\W*$", re.I)


def modal_sense(old: str, new: str) -> tuple[Sense, Burden, str] | None:
    """The sense of a sentence in which only modal verbs differ, and who then bears the duty."""
    was, now = _WORD.findall(old), _WORD.findall(new)
    steps = [
        (was[a:b], now[c:d], was[:a])
        for kind, a, b, c, d in SequenceMatcher(None, was, now, autojunk=False).get_opcodes()
        if kind != "equal"
    ]
    if not steps or not all(_is_modal(gone) and _is_modal(come) for gone, come, _ in steps):
        return None
    rises = {_rank(come) - _rank(gone) > 0 for gone, come, _ in steps if _rank(come) != _rank(gone)}
    if len(rises) != 1:
        return None
    gone, come, before = steps[0]
    agency = bool(_AGENCY.search(" ".join(before[-6:])))
    rose = rises.pop()
    sense = Sense.TIGHTER if rose else Sense.LOOSER
    return sense, _burden(agency, rose), f'"{gone[0]}" became "{come[0]}"'


def _is_modal(words: list[str]) -> bool:
    return len(words) == 1 and words[0].lower() in _MODALS


def _rank(words: list[str]) -> int:
    return _MODALS[words[0].lower()]


def _burden(agency: bool, rose: bool) -> Burden:
    if agency and rose:
        return Burden("agency", "What the agency could do is now its duty.")
    if agency:
        return Burden("contractor", "A duty of the agency is now left to it.")
    if rose:
        return Burden("contractor", "What was advice is now a duty.")
    return Burden("agency", "What was a duty is now advice.")


def remedy_sense(old: str, new: str) -> tuple[Sense, str] | None:
    """Whether a remedy got harsher or milder; ``None`` when both are of one kind, or unknown.

    Another remedy beside those there were is harsher; else the harshest of each decides.
    """
    was, now = _kinds(old), _kinds(new)
    if was is None or now is None or was == now:
        return None
    harsher = was.keys() < now.keys() or max(now) > max(was)
    if not harsher and not (now.keys() < was.keys() or max(now) < max(was)):
        return None
    said = " and ".join(was.values()), " and ".join(now.values())
    return Sense.TIGHTER if harsher else Sense.LOOSER, f"{said[0]} became {said[1]}"


def _kinds(text: str) -> dict[int, str] | None:
    """How harsh each remedy named in a text is, with its name, the harshest first."""
    if _NONE.match(text):
        return {0: "no remedy"}
    if re.search(r"\b(not|no|never|without)\b", text, re.I):
        return None
    return {rank: name for rank, name, word in _REMEDIES if word.search(text)} or None


def pay_reading(text: str) -> Bare:
    """How a share or sum of pay in a remedy is read: a cut is harsher when more, pay when less."""
    if _CUT.search(text):
        return "at_least"
    return "at_most" if _PAID.search(text) else "unordered"
