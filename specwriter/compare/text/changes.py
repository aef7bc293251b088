"""What differs between two texts, one change at a time, with its place in words."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from typing import Literal

from specwriter.compare.text.columns import other_columns
from specwriter.compare.text.pairs import (
    Added,
    Clause,
    Match,
    MatchedRow,
    MatchedTable,
    Part,
    Removed,
    Rewritten,
    TextMatch,
    is_same,
)
from specwriter.compare.text.words import Span
from specwriter.reading import Paragraph, Row, Table

Kind = Literal["rewritten", "added", "removed", "moved", "row added", "row removed"]

_CAPTION = re.compile(r"^(?:Table|Figure)\s+\S+?(?=[.:]?\s|$)")
_TYPED = re.compile(r"\s*(?:Section|Article|Part|Clause)?\s*(\d+(?:\.\d+)*)[.)]?\s+(?=\S)")
"""A number typed before the words of a heading."""

_REFERS = re.compile(
    r"(?:^|\b(?:section|subsection|clause|article|part|paragraph|item|table|figure)s?\s+)$", re.I
)
"""What stands before a number that names a clause or table, and counts nothing."""

_SHORT = 60
_FRONT = ("Front ", "FrontTitle", "FrontHeading", "FrontPoint")


@dataclass(frozen=True, slots=True, kw_only=True)
class TextChange:
    """One change: which clause, where in it, what stood there and what stands there now.

    ``clause`` is the heading in the old document, ``new_clause`` in the new one; either is empty
    where that document has no such clause. ``place`` names the paragraph, item, or table, row and
    column; ``after`` quotes what a new text follows. ``follows`` is true for a cross reference
    that only follows a clause or table with a new number.
    """

    kind: Kind
    clause: str
    new_clause: str
    place: str
    old: str = ""
    new: str = ""
    spans: tuple[Span, ...] = ()
    after: str = ""
    is_heading: bool = False
    follows: bool = False


def renumbered(match: TextMatch) -> dict[str, str]:
    """Old number → new number of clauses, tables and figures that stand in both."""
    found: dict[str, str] = {}
    for clause in match.clauses:
        for part in clause.parts:
            if not isinstance(part, Match | Rewritten):
                continue
            was, now = _number(part.old), _number(part.new)
            if was and now and was != now:
                found[was] = now
    moves = {c.move: c.old for c in match.clauses if c.move and c.old}
    for clause in match.clauses:
        old = moves.get(clause.move) if clause.move and clause.new else None
        if old and clause.new and _number(old) != _number(clause.new):
            found[_number(old)] = _number(clause.new)
    return found


def _number(paragraph: Paragraph) -> str:
    if paragraph.heading:
        typed = _TYPED.match(paragraph.text)
        return _bare(paragraph.label) or (typed[1] if typed else "")
    caption = _CAPTION.match(paragraph.text)
    return caption[0].split()[-1] if caption else ""


def _bare(label: str) -> str:
    return label.strip().rstrip(".")


def text_changes(match: TextMatch) -> tuple[TextChange, ...]:
    """Every change in reading order; a clause that moved is one change at its new place."""
    numbers = renumbered(match)
    whole = _told_whole(match)
    origins = {clause.move: clause for clause in match.clauses if clause.move and clause.old}
    found: list[TextChange] = []
    before = ""
    for clause in match.clauses:
        if clause.move and clause.new:
            found += _moved(clause, origins[clause.move], before, numbers, whole)
        elif not clause.move:
            found += _in_clause(clause, numbers, before, whole)
        before = _title(clause.old if clause.new else None) or clause.title or before
    for beside in match.margins:
        found += _in_clause(beside.clause, numbers, "", whole)
    return tuple(found)


def _told_whole(match: TextMatch) -> frozenset[int]:
    """The moves of which one end lies in a clause that came or went, and is told with it."""
    return frozenset(
        part.move
        for clause in match.clauses
        if not clause.move and _is_alone(clause)
        for part in clause.parts
        if isinstance(part, Removed | Added) and part.move
    )


def _is_alone(clause: Clause) -> bool:
    return (clause.old is None) != (clause.new is None)


def _moved(
    clause: Clause, origin: Clause, before: str, numbers: dict[str, str], whole: frozenset[int]
) -> Iterator[TextChange]:
    yield TextChange(
        kind="moved",
        clause=origin.title,
        new_clause=clause.title,
        place="the clause",
        old=_text(origin.parts),
        new=_text(clause.parts),
        after=before,
    )
    for part in clause.parts:
        if isinstance(part, Added) and any(span.kind != "equal" for span in part.spans):
            yield TextChange(
                kind="rewritten",
                clause=origin.title,
                new_clause=clause.title,
                place="a paragraph that moved with the clause",
                old=_side(part.spans, "removed"),
                new=_side(part.spans, "added"),
                spans=part.spans,
                follows=_only_follows(part.spans, numbers),
            )
    for part in (*origin.parts, *clause.parts):
        if isinstance(part, Removed | Added) and part.move != clause.move:
            yield from _one_side(part, clause, "", "", whole)


def _side(spans: Sequence[Span], kind: str) -> str:
    return "".join(span.shown for span in spans if span.kind in ("equal", kind))


def _text(parts: Sequence[Part]) -> str:
    return "\n".join(part.block.shown for part in parts if isinstance(part, Removed | Added))


def _in_clause(
    clause: Clause, numbers: dict[str, str], before: str, whole: frozenset[int]
) -> Iterator[TextChange]:
    if _is_alone(clause):
        yield _whole(clause, before)
        return
    places = _Places()
    gone: Table | None = None
    for part in clause.parts:
        if is_front_sheet(part):
            continue
        place, after = places.next(part)
        if isinstance(part, Removed | Added) and isinstance(part.block, Table):
            if isinstance(part, Added) and gone and (columns := other_columns(gone, part.block)):
                place = f"{place}, {columns}"
            gone = part.block if isinstance(part, Removed) else None
        if isinstance(part, Rewritten):
            yield _rewritten(part, clause, place, numbers)
        elif isinstance(part, Removed | Added):
            yield from _one_side(part, clause, place, after, whole)
        elif isinstance(part, MatchedTable) and not part.is_same:
            yield from _in_table(part, clause, place, numbers)


def is_front_sheet(part: Part) -> bool:
    """A front sheet speaks to the writer and is taken out: it is no text of the provision."""
    block = part.block if isinstance(part, Added | Removed) else part.old
    return isinstance(block, Paragraph) and block.style.startswith(_FRONT)


def _whole(clause: Clause, before: str) -> TextChange:
    return TextChange(
        kind="removed" if clause.old else "added",
        clause=_title(clause.old),
        new_clause=_title(clause.new),
        place="the clause",
        old=_text(clause.parts) if clause.old else "",
        new=_text(clause.parts) if clause.new else "",
        after=before,
    )


def _title(heading: Paragraph | None) -> str:
    if heading is None:
        return ""
    return " ".join(filter(None, (heading.label, heading.text.strip())))


def _rewritten(part: Rewritten, clause: Clause, place: str, numbers: dict[str, str]) -> TextChange:
    return TextChange(
        kind="rewritten",
        clause=_title(clause.old),
        new_clause=_title(clause.new),
        place=place,
        old=part.old.shown,
        new=part.new.shown,
        spans=part.spans,
        is_heading=bool(part.new.heading),
        follows=_only_follows(part.spans, numbers),
    )


def _only_follows(spans: Sequence[Span], numbers: dict[str, str]) -> bool:
    """True when each change is an old number that became the new number of the same thing."""
    changed = [place for place, span in enumerate(spans) if span.kind != "equal"]
    pairs = list(zip(changed[::2], changed[1::2], strict=False))
    if len(changed) % 2 or not changed:
        return False
    return all(
        (spans[a].kind, spans[b].kind) == ("removed", "added")
        and numbers.get(_bare(spans[a].text)) == _bare(spans[b].text)
        and _refers("".join(span.text for span in spans[:a]), spans[a].text)
        for a, b in pairs
    )


def _refers(before: str, number: str) -> bool:
    """Whether a number names a clause or a table: ``3`` alone may as well count readings."""
    return "." in _bare(number) or bool(_REFERS.search(before.lstrip()))


def _one_side(
    part: Removed | Added, clause: Clause, place: str, after: str, whole: frozenset[int]
) -> Iterator[TextChange]:
    """What came or went; what moved is told once, where it now stands."""
    removed, moved = isinstance(part, Removed), bool(part.move) and part.move not in whole
    if moved and removed:
        return
    yield TextChange(
        kind="moved" if moved else "removed" if removed else "added",
        clause=_title(clause.old),
        new_clause=_title(clause.new),
        place=place or "a paragraph",
        old=part.block.shown if moved or removed else "",
        new="" if removed else part.block.shown,
        after=after,
    )


def _in_table(
    part: MatchedTable, clause: Clause, place: str, numbers: dict[str, str]
) -> Iterator[TextChange]:
    columns = [cell.text for cell in part.old.rows[0].cells] if part.old.rows else []
    names = _names(part.old.rows) | _names(part.new.rows)
    moved = _moved_rows(part.rows)
    before = ""
    for row in part.rows:
        if row.old is None or row.new is None:
            told = _row(row, clause, place, before, names)
            yield from _moved_row(told) if (told.old or told.new) in moved else (told,)
        else:
            where = f"{place}, row {_quoted(names[id(row.old)])}"
            yield from _cells(row, clause, where, columns, numbers)
        if row.old:
            before = names[id(row.old)]


def _row(
    row: MatchedRow, clause: Clause, place: str, before: str, names: dict[int, str]
) -> TextChange:
    one = row.old or row.new
    assert one is not None
    text = one.shown
    return TextChange(
        kind="row removed" if row.old else "row added",
        clause=_title(clause.old),
        new_clause=_title(clause.new),
        place=f"{place}, row {_quoted(names[id(one)])}",
        old=text if row.old else "",
        new=text if row.new else "",
        after=before,
    )


def _moved_rows(rows: Sequence[MatchedRow]) -> frozenset[str]:
    """The text of rows that stand once on each side, at another place."""
    gone = Counter(row.old.shown for row in rows if row.old and row.new is None)
    come = Counter(row.new.shown for row in rows if row.new and row.old is None)
    return frozenset(text for text in gone if gone[text] == come[text] == 1)


def _moved_row(told: TextChange) -> Iterator[TextChange]:
    """A row that moved, told where it now stands."""
    if told.kind == "row added":
        after = f"the row {_quoted(told.after)}" if told.after else ""
        yield replace(told, kind="moved", old=told.new, after=after)


def _cells(
    row: MatchedRow,
    clause: Clause,
    place: str,
    columns: Sequence[str],
    numbers: dict[str, str],
) -> Iterator[TextChange]:
    for index, parts in enumerate(row.cells):
        column = columns[index] if index < len(columns) else f"{index + 1}"
        where = f"{place}, column {_quoted(column)}"
        for part in parts:
            if isinstance(part, Rewritten):
                yield _rewritten(part, clause, where, numbers)
            elif isinstance(part, Removed | Added):
                yield from _one_side(part, clause, where, "", frozenset())
            elif isinstance(part, MatchedTable) and not part.is_same:
                yield from _in_table(part, clause, where, numbers)


def _names(rows: Sequence[Row]) -> dict[int, str]:
    """``id`` of each row → its first cell that is not empty, with as many more as tell it apart."""
    filled = [[text for cell in row.cells if (text := cell.text.strip())] for row in rows]
    known = Counter(tuple(cells[:n]) for cells in filled for n in range(1, len(cells) + 1))
    return {id(row): _told_apart(cells, known) for row, cells in zip(rows, filled, strict=True)}


def _told_apart(cells: list[str], known: Counter[tuple[str, ...]]) -> str:
    parts = (cells[:n] for n in range(1, len(cells)) if known[tuple(cells[:n])] == 1)
    return " | ".join(next(parts, cells))


def _quoted(text: str) -> str:
    flat = " ".join(text.split())
    return f'"{flat if len(flat) <= _SHORT else flat[: _SHORT - 1].rstrip() + "…"}"'


class _Places:
    """Names the blocks of a clause as they follow each other in the old document."""

    def __init__(self) -> None:
        self._paragraphs = self._tables = 0
        self._caption = ""
        self._opening = ""
        self._after = ""

    def next(self, part: Part) -> tuple[str, str]:
        """The name of a part, and what it follows."""
        after = self._after
        block = part.block if isinstance(part, Added | Removed) else part.old
        counts = not isinstance(part, Added)
        place = self._table(counts) if isinstance(block, Table) else self._paragraph(block, counts)
        if counts and not isinstance(part, Removed):
            self._after = place if isinstance(block, Table) else _quoted(block.shown)
        return place, after

    def _table(self, counts: bool) -> str:
        self._tables += counts
        return self._caption or f"table {self._tables}"

    def _paragraph(self, block: Paragraph, counts: bool) -> str:
        if block.heading:
            return "the heading"
        if caption := _CAPTION.match(block.text):
            self._caption = caption[0]
            return f"the caption of {caption[0]}"
        if block.label:
            return f"item {block.label}" + (f" under {self._opening}" if self._opening else "")
        self._paragraphs += counts
        self._opening = _quoted(block.text) if block.text.rstrip().endswith(":") else ""
        return f"paragraph {self._paragraphs}" if counts else "a new paragraph"


def is_changed(clause: Clause) -> bool:
    """Whether anything in a clause differs but its number."""
    return bool(clause.move) or not all(is_same(p) or is_front_sheet(p) for p in clause.parts)
