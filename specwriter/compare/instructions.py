"""Changes of text as the numbered instructions of an addendum: delete, substitute, add, move."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from specwriter.compare.edits import Edit, edits_of
from specwriter.compare.text.changes import TextChange


@dataclass(frozen=True, slots=True, kw_only=True)
class Instruction:
    """One numbered instruction; ``given`` are whole paragraphs or rows to be put in.

    ``edits`` are empty where the whole is given; ``is_table`` says that what is given are the rows
    of a table, their cells parted by `` | ``.
    """

    says: str
    changes: tuple[TextChange, ...] = ()
    edits: tuple[Edit, ...] = ()
    given: tuple[str, ...] = ()
    is_table: bool = False


def instructions(
    changes: Sequence[TextChange], renumbered: Mapping[str, str]
) -> tuple[Instruction, ...]:
    """Every change told in an instruction; references that follow a new number share one.

    Texts or rows that come one after the other in one place are put in by one instruction, and a
    table that goes where another comes is substituted.
    """
    told = [change for change in changes if not change.follows]
    found = [_instruction(tuple(some)) for some in _together(told)]
    return (*found, *_renumbering(renumbered, any(change.follows for change in changes)))


def _together(changes: Sequence[TextChange]) -> Iterator[list[TextChange]]:
    """The changes of each instruction: neighbours that are put in at one place, else one alone."""
    runs: list[list[TextChange]] = []
    for change in changes:
        if runs and (_same_place(runs[-1][-1], change) or _other_table(runs[-1], change)):
            runs[-1].append(change)
        else:
            runs.append([change])
    yield from runs


def _same_place(one: TextChange, other: TextChange) -> bool:
    adds = one.kind == other.kind and one.kind in ("added", "row added")
    tables = [_is_table(each) and each.kind == "added" for each in (one, other)]
    whole = "the clause" in (one.place, other.place)
    return adds and not whole and not any(tables) and _place(one) == _place(other)


def _place(change: TextChange) -> tuple[str, str, str, str]:
    table = _table(change) if change.kind == "row added" else ""
    return change.clause, change.new_clause, table, change.after


def _other_table(run: list[TextChange], change: TextChange) -> bool:
    """Whether a table comes in the place of the one that goes."""
    return (
        len(run) == 1
        and (run[0].kind, change.kind) == ("removed", "added")
        and _is_table(run[0])
        and _is_table(change)
        and _place(run[0])[:2] == _place(change)[:2]
    )


def _is_table(change: TextChange) -> bool:
    return change.place.startswith(("Table ", "table ")) and ", row " not in change.place


def _instruction(changes: tuple[TextChange, ...]) -> Instruction:
    first, last = changes[0], changes[-1]
    if (first.kind, last.kind) == ("removed", "added"):
        says = f"In {_of(first)}, delete {first.place} and substitute the following table:"
        return Instruction(says=says, changes=changes, given=_lines(last.new), is_table=True)
    match first.kind:
        case "rewritten":
            return _rewritten(first)
        case "added":
            return _added(changes)
        case "removed":
            return _removed(first)
        case "moved":
            return _moved(first)
        case "row added":
            return _rows_added(changes)
        case "look":
            says = (
                f"In {_of(first)}, {first.place}, set {_quoted(first.spans[0].text)} {first.new}."
            )
            return Instruction(says=says, changes=changes)
        case "row removed":
            where = f"{_of(first)}, {_table(first)}"
            row = first.place.partition(", row ")[2]
            return Instruction(says=f"In {where}, delete the row {row}.", changes=changes)


def _rows_added(changes: tuple[TextChange, ...]) -> Instruction:
    first = changes[0]
    rows = "row" if len(changes) == 1 else "rows"
    after = f" after the row {_quoted(first.after)}" if first.after else " as the first"
    says = f"In {_of(first)}, {_table(first)}, add the following {rows}{after}:"
    given = tuple(change.new for change in changes)
    return Instruction(says=says, changes=changes, given=given)


def _of(change: TextChange) -> str:
    name = change.clause or change.new_clause or "the opening"
    return f"the {name.lower()}" if name in ("Header", "Footer") else name


def _table(change: TextChange) -> str:
    return change.place.split(", row ")[0]


def _rewritten(change: TextChange) -> Instruction:
    where = f"In {_of(change)}, {change.place}"
    edits = edits_of(change.spans)
    if change.new.startswith("[figure"):
        says = f"{where}, delete the figure and substitute the one that is described so:"
        return Instruction(says=says, changes=(change,), given=(_described(change.new),))
    if not edits:
        return Instruction(
            says=f"{where}, delete the text and substitute the following:",
            changes=(change,),
            given=(change.new,),
        )
    steps = [
        f"delete {_quoted(edit.delete)}"
        + (f" and substitute {_quoted(edit.substitute)}" if edit.substitute else "")
        for edit in edits
    ]
    return Instruction(says=f"{where}, {'; '.join(steps)}.", changes=(change,), edits=edits)


def _added(changes: tuple[TextChange, ...]) -> Instruction:
    change = changes[0]
    if change.place == "the clause":
        after = f"After {change.after}, add" if change.after else "At the beginning, add"
        heading, *text = change.new.split("\n")
        says = f"{after} the clause {change.new_clause or heading}:"
        return Instruction(says=says, changes=changes, given=tuple(text))
    where = f"after {change.after}" if change.after else "at its beginning"
    return Instruction(
        says=f"In {_of(change)}, add the following {where}:",
        changes=changes,
        given=tuple(line for each in changes for line in _lines(each.new)),
        is_table=_is_table(change),
    )


def _removed(change: TextChange) -> Instruction:
    if change.place == "the clause":
        says = f"Delete {change.clause} with all its text."
    elif change.old.startswith("[figure"):
        described = _quoted(_described(change.old))
        says = f"In {_of(change)}, delete the figure that is described so: {described}."
    elif _is_table(change):
        says = f"In {_of(change)}, delete {change.place} with all its rows."
    else:
        says = f"In {_of(change)}, delete {change.place}, which reads {_quoted(change.old)}."
    return Instruction(says=says, changes=(change,))


def _described(figure: str) -> str:
    return figure.strip("[]").removeprefix("figure: ")


def _moved(change: TextChange) -> Instruction:
    if change.place == "the clause":
        to = f"to follow {change.after}" if change.after else "to the beginning"
        number = change.new_clause.split(" ")[0]
        says = f"Move {change.clause} {to}; its number becomes {number}."
        return Instruction(says=says, changes=(change,))
    to = f"{_of(change)} to follow {change.after}" if change.after else _beginning_of(change)
    return Instruction(
        says=f"Move the text {_quoted(change.new or change.old)} to {to}.",
        changes=(change,),
    )


def _beginning_of(change: TextChange) -> str:
    return f"the beginning of {_of(change)}"


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


def _successor(name: str) -> str:
    last = re.search(r"\d+$", name)
    return f"{name[: last.start()]}{int(last[0]) + 1}" if last else ""


def _lines(text: str) -> tuple[str, ...]:
    return tuple(line for line in text.split("\n"))


def _quoted(text: str) -> str:
    if text.startswith('"') and text.endswith('"'):
        return text
    return f'"{text}"'
