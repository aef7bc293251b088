"""Duties of the Contractor with ``shall`` or ``must``, where the house does not write imperatives.

Clauses state duties in the imperative, one sentence a line. A sentence, or a part of it behind a
semicolon, is a duty when it begins with one of the verbs below, or when one of them follows the
comma of its opening phrase (*Where a lane narrows, end the pass ...*).
"""

from __future__ import annotations

import re

from specwriter.assemble.once import ITEM

_VERBS = """
adjust aim apply average begin bind bring carry check choose clean close complete comply compute
correct cut discuss do empty end enter find finish fit give grind haul hold inspect join keep lay
leave let lift locate lower make measure notify obtain open park pick post put raise reduce remove
repair repeat replace report run saw set simulate spread start stop submit sweep take tell train
treat turn use walk wash weigh
"""
"""Verbs that begin no noun in the texts of clauses."""

_VERBS_OR_NOUNS = (
    "cover design groove light mark place plan record reverse round seal store test texture"
)
"""Verbs only before one of the words that a noun does not stand before."""

_BEHIND_A_VERB = "a an again by each for in no such the what with"
_OPENING = re.compile(
    r"(?:After|As|At|Before|During|For|In|On|Until|When|Where|While|With|Within)\b", re.IGNORECASE
)
_NO_SENTENCE = re.compile(r"\s*(?:\||Table:)")
_HEAD = re.compile(r"(?P<negated>[Dd]o not )?(?P<verb>[A-Za-z]+)(?P<next>,? ?[a-z]*)")


def with_duty_verb(text: str, verb: str) -> str:
    """The Markdown of a clause in which each duty reads ``the Contractor shall ...``."""
    return "\n".join(_line(line, verb) for line in text.split("\n"))


def _line(line: str, verb: str) -> str:
    if _NO_SENTENCE.match(line):
        return line
    marker = found[0] if (found := ITEM.match(line)) else ""
    said = line[len(marker) :]
    if marker and said[:1].islower():
        # An item that begins small carries the sentence above the list on.
        return line
    return marker + "; ".join(_part(part, verb) for part in said.split("; "))


def _part(part: str, verb: str) -> str:
    """One sentence, or what stands of it between two semicolons."""
    at = duty_at(part)
    if at is None:
        return part
    head = _HEAD.match(part, at)
    assert head is not None
    subject = "the Contractor" if at or part[0].islower() else "The Contractor"
    negated = " not" if head["negated"] else ""
    rest = head["verb"][0].lower() + part[head.start("verb") + 1 :]
    return f"{part[:at]}{subject} {verb}{negated} {rest}"


def duty_at(part: str) -> int | None:
    """Where the verb of a duty stands: at the beginning, or behind the comma of an opening."""
    if _is_duty(part, 0):
        return 0
    if _OPENING.match(part):
        commas = (found.end() for found in re.finditer(", ", part))
        return next((at for at in commas if _is_duty(part, at)), None)
    return None


def _is_duty(part: str, at: int) -> bool:
    head = _HEAD.match(part, at)
    if head is None:
        return False
    verb = head["verb"].lower()
    if head["negated"] or verb in _VERBS.split():
        return True
    return verb in _VERBS_OR_NOUNS.split() and head["next"].strip() in _BEHIND_A_VERB.split()
