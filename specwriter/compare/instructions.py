"""Changes of text as the numbered instructions of an addendum: delete, substitute, add, move."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from specwriter.compare.text.changes import TextChange
from specwriter.compare.text.words import Span, tokens
from specwriter.reading.block import OBJECT

_MOST_EDITS = 4
"""A paragraph with more changes is given anew as a whole."""

_MOST_CHANGED = 0.6
_CONTEXT = 8


@dataclass(frozen=True, slots=True)
class Edit:
    """Words to delete and words to put in their place; the first stand once in the paragraph."""

    delete: str
    substitute: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Instruction:
    """One numbered instruction; ``given`` are whole paragraphs or rows to be put in.

    ``edits`` are empty where the whole is given.
    """

    says: str
    change: TextChange | None = None
    edits: tuple[Edit, ...] = ()
    given: tuple[str, ...] = ()


def instructions(
    changes: Sequence[TextChange], renumbered: Mapping[str, str]
) -> tuple[Instruction, ...]:
    """One instruction for each change; references that only follow a new number share one."""
    found = [_instruction(change) for change in changes if not change.follows]
    return (*found, *_renumbering(renumbered, any(change.follows for change in changes)))


def _instruction(change: TextChange) -> Instruction:
    match change.kind:
        case "rewritten":
            return _rewritten(change)
        case "added":
            return _added(change)
        case "removed":
            return _removed(change)
        case "moved":
            return _moved(change)
        case "row added":
            where = f"{_of(change)}, {_table(change)}"
            after = f" after the row {_quoted(change.after)}" if change.after else ""
            return Instruction(
                says=f"In {where}, add the following row{after}:",
                change=change,
                given=(change.new,),
            )
        case "row removed":
            where = f"{_of(change)}, {_table(change)}"
            return Instruction(
                says=f"In {where}, delete the row {_quoted(_first(change.old))}.", change=change
            )


def _of(change: TextChange) -> str:
    return change.clause or change.new_clause or "the opening"


def _table(change: TextChange) -> str:
    return change.place.split(", row ")[0]


def _first(row: str) -> str:
    return row.split(" | ")[0]


def _rewritten(change: TextChange) -> Instruction:
    where = f"In {_of(change)}, {change.place}"
    edits = edits_of(change.spans)
    if change.new.startswith("[figure"):
        says = f"{where}, delete the figure and substitute the one that is described so:"
        return Instruction(says=says, change=change, given=(change.new.strip("[]"),))
    if not edits:
        return Instruction(
            says=f"{where}, delete the text and substitute the following:",
            change=change,
            given=(change.new,),
        )
    steps = [
        f"delete {_quoted(edit.delete)}"
        + (f" and substitute {_quoted(edit.substitute)}" if edit.substitute else "")
        for edit in edits
    ]
    return Instruction(says=f"{where}, {'; '.join(steps)}.", change=change, edits=edits)


def edits_of(spans: Sequence[Span]) -> tuple[Edit, ...]:
    """The edits that turn the old paragraph into the new one, carried out in this order.

    Empty when the paragraph is better given anew: too much of it changed, or a picture did.
    """
    old = "".join(span.text for span in spans if span.kind != "added")
    groups = list(_groups(spans))
    changed = sum(len(gone) for _, gone, _ in groups)
    if len(groups) > _MOST_EDITS or OBJECT in old or changed > _MOST_CHANGED * max(len(old), 1):
        return ()
    text, edits, moved = old, [], 0
    for start, gone, come in groups:
        edit, text = _edit(text, start + moved, gone, come)
        moved += len(come) - len(gone)
        if edit is None or OBJECT in edit.substitute:
            return ()
        edits.append(edit)
    return tuple(edits)


def _groups(spans: Sequence[Span]) -> Iterator[tuple[int, str, str]]:
    """Place in the old paragraph, words that go, words that come; neighbours as one."""
    place, gone, come = 0, "", ""
    for span in spans:
        if span.kind == "equal":
            if gone or come:
                yield place - len(gone), gone, come
            gone = come = ""
        if span.kind == "added":
            come += span.text
        else:
            place += len(span.text)
            gone += span.text if span.kind == "removed" else ""
    if gone or come:
        yield place - len(gone), gone, come


def _edit(text: str, start: int, gone: str, come: str) -> tuple[Edit | None, str]:
    """An edit whose words stand once in the text, with as little around them as that takes."""
    end = start + len(gone)
    new = text[:start] + come + text[end:]
    before, after = tokens(text[:start]), tokens(text[end:])
    for width in range(_CONTEXT * 2 + 1):
        left = "".join(before[len(before) - min(width, len(before)) :])
        right = "".join(after[: min(width, len(after))])
        if not gone and not (left + right).strip():
            continue
        delete = left + gone + right
        trimmed = delete.strip()
        if trimmed and text.count(delete) == 1 and _whole_words(text, start - len(left), delete):
            return Edit(delete, left + come + right), new
    return None, new


def _whole_words(text: str, start: int, part: str) -> bool:
    """Whether a part neither begins nor ends inside a word."""
    end = start + len(part)
    before, after = text[start - 1 : start], text[end : end + 1]
    begins = not (before.isalnum() and part[:1].isalnum())
    return begins and not (after.isalnum() and part[-1:].isalnum())


def _added(change: TextChange) -> Instruction:
    if change.place == "the clause":
        after = f"After {change.after}, add" if change.after else "At the beginning, add"
        heading, *text = change.new.split("\n")
        says = f"{after} the clause {change.new_clause or heading}:"
        return Instruction(says=says, change=change, given=tuple(text))
    behind = f" after {change.after}" if change.after else ""
    return Instruction(
        says=f"In {_of(change)}, add the following{behind}:",
        change=change,
        given=_lines(change.new),
    )


def _removed(change: TextChange) -> Instruction:
    if change.place == "the clause":
        return Instruction(says=f"Delete {change.clause} with all its text.", change=change)
    return Instruction(
        says=f"In {_of(change)}, delete {change.place}, which reads {_quoted(change.old)}.",
        change=change,
    )


def _moved(change: TextChange) -> Instruction:
    if change.place == "the clause":
        to = f"to follow {change.after}" if change.after else "to the beginning"
        number = change.new_clause.split(" ")[0]
        says = f"Move {change.clause} {to}; its number becomes {number}."
        return Instruction(says=says, change=change)
    behind = f" to follow {change.after}" if change.after else ""
    return Instruction(
        says=f"Move the text {_quoted(change.new or change.old)} to {_of(change)}{behind}.",
        change=change,
    )


def _renumbering(renumbered: Mapping[str, str], references: bool) -> Iterator[Instruction]:
    if not renumbered:
        return
    pairs = ", ".join(f"{old} as {new}" for old, new in _runs(renumbered))
    follow = " References to these numbers follow." if references else ""
    yield Instruction(says=f"Renumber {pairs}.{follow}")


def _runs(renumbered: Mapping[str, str]) -> Iterator[tuple[str, str]]:
    """Numbers that follow each other on both sides are told as one stretch."""
    pairs = list(renumbered.items())
    place = 0
    while place < len(pairs):
        end = place
        while end + 1 < len(pairs) and _next_of(pairs[end], pairs[end + 1]):
            end += 1
        if end == place:
            yield pairs[place]
        else:
            yield tuple(f"{pairs[place][i]} to {pairs[end][i]}" for i in (0, 1))  # type: ignore[misc]
        place = end + 1


def _next_of(pair: tuple[str, str], other: tuple[str, str]) -> bool:
    return all(_successor(a) == b for a, b in zip(pair, other, strict=True))


def _successor(number: str) -> str:
    head, dot, last = number.rpartition(".")
    return f"{head}{dot}{int(last) + 1}" if last.isdigit() else ""


def _lines(text: str) -> tuple[str, ...]:
    return tuple(line for line in text.split("\n"))


def _quoted(text: str) -> str:
    if text.startswith('"') and text.endswith('"'):
        return text
    return f'"{text}"'
