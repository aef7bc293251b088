"""How values of the job are worded: as written, with the other unit system, in plain words."""

from __future__ import annotations

from fractions import Fraction
from typing import Any, Literal

from specwriter.assemble.labels import words
from specwriter.assemble.page import Phrase, blank, plain
from specwriter.assemble.view import Keyed, Many, Missing, Text, Value, View
from specwriter.model.labels import joints
from specwriter.model.project import Project
from specwriter.quantity import Quantity, other_system, show

Bound = Literal["at_least", "at_most"]


def written(value: Any) -> Phrase:
    """A value exactly as the job writes it; a blank when it is absent."""
    match value:
        case Phrase():
            return value
        case Value():
            return plain(value.quantity.text.strip(), value.path)
        case Text():
            return plain(value, value.path)
        case Missing():
            return blank(value.path)
        case Many() if value:
            return and_list(value)
        case View() | Keyed() | Many():
            return blank(getattr(value, "absent", "") or value.path)
        case _:
            return plain(str(value))


def both(value: Any, project: Project) -> Phrase:
    """A value as written, with the other unit system beside it where the project asks for it.

    Without dual units, only a value written outside the governing units is converted.
    """
    if not isinstance(value, Value):
        return written(value)
    return plain(both_text(value.quantity, project), value.path)


def both_text(quantity: Quantity, project: Project) -> str:
    """The text of a quantity as ``both`` prints it."""
    text = quantity.text.strip()
    foreign = quantity.unit.system not in ("both", project.governing_units)
    other = other_system(quantity) if project.dual_units or foreign else None
    if other is None:
        return text
    return f"{text} ({other.removeprefix('at least ').removeprefix('at most ')})"


def limit(value: Any, project: Project, bound: Bound | None = None) -> Phrase:
    """A limit in prose; ``bound`` says which way a bare value bounds.

    At most 0 in reads like a slip of the pen, so it is said that none is allowed.
    """
    if isinstance(value, Value) and _allows_none(value.quantity, bound):
        return plain(f"{show(Fraction(0), value.quantity.unit)} (none is allowed)", value.path)
    phrase = both(value, project)
    if bound and isinstance(value, Value) and value.quantity.form == "value":
        return plain(bound.replace("_", " ") + " ") + phrase
    return phrase


def _allows_none(quantity: Quantity, bound: Bound | None) -> bool:
    """True for a limit of zero from above."""
    form = bound if quantity.form == "value" else quantity.form
    return form == "at_most" and not quantity.amounts[0].value


def in_words(value: Any) -> Phrase:
    """A fixed word of the job file in plain words."""
    if isinstance(value, Text):
        return plain(words(value), value.path)
    return written(value)


def and_list(values: Any) -> Phrase:
    """Members joined as in ``a, b and c``; what reads the same is said once."""
    phrases = [written(value) for value in values]
    if not phrases:
        return blank(getattr(values, "path", "")) if isinstance(values, Many) else Phrase(())
    return joined(phrases)


def joined(phrases: list[Phrase]) -> Phrase:
    """Phrases joined as in ``a, b and c``; one text stands once, all its paths are kept."""
    by_text: dict[str, Phrase] = {}
    for phrase in phrases:
        known = by_text.get(phrase.text)
        by_text[phrase.text] = phrase if known is None else _merged(known, phrase)
    first, *others = by_text.values()
    result = first
    for joint, phrase in zip(joints(len(by_text))[1:], others, strict=True):
        result = result + plain(joint) + phrase
    return result


def _merged(known: Phrase, other: Phrase) -> Phrase:
    return Phrase(known.runs, known.printed + other.printed, known.missing + other.missing)
