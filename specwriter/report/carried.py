"""What came of checking a Word file: the job inside it, and its text against that job."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from difflib import SequenceMatcher

from specwriter.report.sentences import counted

_MOST = 12
_LONG = 160


@dataclass(frozen=True, slots=True, kw_only=True)
class Difference:
    """Lines of the text that the job does not give, and those that it gives instead."""

    stands: tuple[str, ...]
    given: tuple[str, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Carried:
    """A Word file and the job inside it.

    ``whole`` is false when the job itself was tampered with; ``changed`` is ``None`` when the
    file does not say whether its text was. ``differences`` are held against what the job gives
    today; ``undrafted`` says why it gives nothing.
    """

    file: str
    whole: bool
    changed: bool | None
    clauses: str = ""
    differences: tuple[Difference, ...] = ()
    undrafted: str = ""


def differences(stands: Sequence[str], given: Sequence[str]) -> tuple[Difference, ...]:
    """Where the lines of a text are not those that its job gives, in the order of the text."""
    matcher = SequenceMatcher(None, stands, given, autojunk=False)
    return tuple(
        Difference(stands=tuple(stands[a:b]), given=tuple(given[c:d]))
        for tag, a, b, c, d in matcher.get_opcodes()
        if tag != "equal"
    )


def carried_text(carried: Carried) -> str:
    """Whether the text is that of the job, and every place where it is not."""
    lines = ["\n   ".join(carried_sentences(carried))]
    for each in carried.differences[:_MOST]:
        lines += [f"   stands: {_cut(line)}" for line in each.stands or ("(nothing)",)]
        lines += [f"   by the job: {_cut(line)}" for line in each.given or ("(nothing)",)]
    if (rest := len(carried.differences) - _MOST) > 0:
        lines.append(f"   and {counted(rest, 'more place', 'more places')}.")
    return "\n".join(lines) + "\n"


def carried_sentences(carried: Carried) -> list[str]:
    """What was checked, and whether job and text are as they were drafted."""
    told = [f"{carried.file}: checked is the job that the document carries inside."]
    if not carried.whole:
        told.append("The job inside was changed since the document was drafted.")
    told.append(_state(carried))
    return [*told, carried.undrafted] if carried.undrafted else told


def _state(carried: Carried) -> str:
    places = counted(len(carried.differences), "place", "places")
    today = "this version of the tool and its clauses"
    match carried.changed, bool(carried.differences):
        case True, True:
            return f"The text was changed by hand since it was drafted, in {places}:"
        case True, False:
            return "The text was changed since it was drafted, and is what the job gives today."
        case False, True:
            return f"The text is as it was drafted; {today} would give another in {places}:"
        case False, False:
            return "The text is as it was drafted."
        case None, True:
            return f"In {places} the text is not what the job gives with {today}:"
        case _:
            return "The text is what the job gives."


def _cut(line: str) -> str:
    return line if len(line) <= _LONG else f"{line[: _LONG - 3]}..."


def carried_json(carried: Carried) -> dict[str, object]:
    """The same for programs."""
    return {
        "file": carried.file,
        "whole": carried.whole,
        "changed": carried.changed,
        "clauses": carried.clauses,
        "undrafted": carried.undrafted,
        "differences": [
            {"stands": list(each.stands), "given": list(each.given)} for each in carried.differences
        ],
    }
