"""What differs between two texts, one change at a time, with its place in words."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from typing import Literal

from specwriter.compare.text import numbers
from specwriter.compare.text.columns import other_columns
from specwriter.compare.text.looks import looks_otherwise
from specwriter.compare.text.moves import beside_again
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
from specwriter.reading import Block, Paragraph, Piece, Row, Table

Kind = Literal["rewritten", "added", "removed", "moved", "row added", "row removed", "look"]

_SHORT = 60
_FRONT = ("Front ", "FrontTitle", "FrontHeading", "FrontPoint")


@dataclass(frozen=True, slots=True, kw_only=True)
class TextChange:
    """One change: which clause, where in it, what stood there and what stands there now.

    ``clause`` is the heading in the old document, ``new_clause`` in the new one; either is empty
    where that document has no such clause. ``place`` names the paragraph, item, or table, row and
    column; ``after`` quotes what a new text follows. ``follows`` is true for a cross reference
    that only follows a clause or table with a new number. Of another ``look``, ``spans`` are the
    words that have it, and ``old`` and ``new`` say how they look.
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
    """Old name → new name of clauses, tables and figures that stand in both."""
    return numbers.renumbered(_in_place(match))


def text_changes(match: TextMatch) -> tuple[TextChange, ...]:
    """Every change in reading order; a clause that moved is told at its new place."""
    names = renumbered(match)
    whole = _told_whole(match)
    found: list[TextChange] = []
    before = ""
    for clause in _in_place(match):
        if clause.move:
            found.append(_moved(clause, before))
        found += _in_clause(clause, names, before, whole)
        before = _title(clause.old) or clause.title or "the opening"
    for beside in match.margins:
        found += _in_clause(beside.clause, names, "", whole)
    return tuple(change for change in found if match.shows_looks or change.kind != "look")


def _in_place(match: TextMatch) -> Iterator[Clause]:
    """The clauses in the order of the new document; of one that moved, both sides as one."""
    origins = {clause.move: clause for clause in match.clauses if clause.move and clause.old}
    for clause in match.clauses:
        if not clause.move:
            yield clause
        elif clause.new:
            yield beside_again(origins[clause.move], clause)


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


def _moved(clause: Clause, before: str) -> TextChange:
    return TextChange(
        kind="moved",
        clause=_title(clause.old),
        new_clause=_title(clause.new),
        place="the clause",
        old="\n".join(part.old.shown for part in _stands(clause)),
        new="\n".join(part.new.shown for part in _stands(clause)),
        after=before,
    )


def _stands(clause: Clause) -> Iterator[Match | Rewritten | MatchedTable]:
    return (part for part in clause.parts if not isinstance(part, Removed | Added))


def _text(parts: Sequence[Part]) -> str:
    return "\n".join(part.block.shown for part in parts if isinstance(part, Removed | Added))


def _in_clause(
    clause: Clause, names: dict[str, str], before: str, whole: frozenset[int]
) -> Iterator[TextChange]:
    if _is_alone(clause):
        yield _whole(clause, before)
        return
    places = _Places(clause.parts)
    gone: Table | None = None
    for part in clause.parts:
        if is_front_sheet(part):
            continue
        place, after = places.next(part)
        if isinstance(part, Removed | Added) and isinstance(part.block, Table):
            if isinstance(part, Added) and gone and (columns := other_columns(gone, part.block)):
                place = f"{place}, {columns}"
            gone = part.block if isinstance(part, Removed) else None
        if isinstance(part, Removed | Added):
            yield from _one_side(part, clause, place, after, whole)
        else:
            yield from _in_both(part, clause, place, names)


def _in_both(
    part: Match | Rewritten | MatchedTable, clause: Clause, place: str, names: dict[str, str]
) -> Iterator[TextChange]:
    """What differs in a block that stands in both."""
    if isinstance(part, MatchedTable):
        yield from _in_table(part, clause, place, names)
        return
    if isinstance(part, Rewritten):
        yield _rewritten(part, clause, place, names)
    for words, was, now in looks_otherwise(part):
        yield TextChange(
            kind="look",
            clause=_title(clause.old),
            new_clause=_title(clause.new),
            place=place,
            old=was,
            new=now,
            spans=(Span("equal", (Piece(words),)),),
        )


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


def _rewritten(part: Rewritten, clause: Clause, place: str, names: dict[str, str]) -> TextChange:
    return TextChange(
        kind="rewritten",
        clause=_title(clause.old),
        new_clause=_title(clause.new),
        place=place,
        old=part.old.shown,
        new=part.new.shown,
        spans=part.spans,
        is_heading=bool(part.new.heading),
        follows=numbers.only_follows(part.spans, names),
    )


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
    part: MatchedTable, clause: Clause, place: str, names: dict[str, str]
) -> Iterator[TextChange]:
    columns = [cell.text for cell in part.old.rows[0].cells] if part.old.rows else []
    called = _names(part.old.rows) | _names(part.new.rows)
    moved = _moved_rows(part.rows)
    before = ""
    for row in part.rows:
        if row.old is None or row.new is None:
            told = _row(row, clause, place, before, called)
            yield from _moved_row(told) if (told.old or told.new) in moved else (told,)
        else:
            where = f"{place}, row {_quoted(called[id(row.old)])}"
            yield from _cells(row, clause, where, columns, names)
        if row.old and row.new:
            before = called[id(row.old)]


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
    names: dict[str, str],
) -> Iterator[TextChange]:
    for index, parts in enumerate(row.cells):
        column = columns[index] if index < len(columns) else f"{index + 1}"
        where = f"{place}, column {_quoted(column)}"
        for part in parts:
            if isinstance(part, Removed | Added):
                yield from _one_side(part, clause, where, "", frozenset())
            else:
                yield from _in_both(part, clause, where, names)


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


def _old_side(part: Part) -> Block | None:
    """The block of the old document; ``None`` for what comes."""
    if isinstance(part, Added):
        return None
    return part.block if isinstance(part, Removed) else part.old


class _Places:
    """Names the blocks of a clause as they follow each other in the old document."""

    def __init__(self, parts: Sequence[Part]) -> None:
        old = (_old_side(part) for part in parts)
        self._known = Counter(_quoted(each.shown) for each in old if isinstance(each, Paragraph))
        self._paragraphs = self._tables = 0
        self._captions = {True: "", False: ""}
        self._opening = self._after = ""
        self._items: list[str] = []
        self._lists = 1

    def next(self, part: Part) -> tuple[str, str]:
        """The name of a part, and what it follows."""
        after = self._after
        counts = not isinstance(part, Added)
        block = part.block if isinstance(part, Added | Removed) else part.old
        place = self._table(counts) if isinstance(block, Table) else self._paragraph(block, counts)
        if counts and not isinstance(part, Removed):
            # What follows a heading comes first.
            heading = isinstance(block, Paragraph) and block.heading
            self._after = "" if heading else self._named(place, block)
        return place, after

    def _named(self, place: str, block: Block) -> str:
        """A paragraph by its first words, where no other of the clause begins so."""
        quoted = _quoted(block.shown)
        return quoted if isinstance(block, Paragraph) and self._known[quoted] == 1 else place

    def _table(self, counts: bool) -> str:
        self._tables += counts
        caption, self._captions[counts] = self._captions[counts], ""
        name = caption or f"table {self._tables}"
        if counts:
            self._opens(f" after {name}")
        return name

    def _paragraph(self, block: Paragraph, counts: bool) -> str:
        if block.heading:
            return "the heading"
        if caption := numbers.CAPTION.match(block.text):
            self._captions[counts] = caption[0]
            return f"the caption of {caption[0]}"
        if block.label:
            return self._labelled(block, counts)
        if not counts:
            return "a new paragraph"
        self._paragraphs += 1
        place = f"paragraph {self._paragraphs}"
        leads = block.text.rstrip().endswith(":")
        self._opens(f" {'under' if leads else 'after'} {self._named(place, block)}")
        return place

    def _labelled(self, block: Paragraph, counts: bool) -> str:
        """An item by its number, and by what tells apart the lists of one clause."""
        outer = ""
        if block.list and block.list[1]:
            outer = f" of {self._items[-1]}" if self._items else ""
        elif counts:
            again = block.label in self._items
            self._lists += again
            self._items = [*(() if again else self._items), block.label]
        which = f" of list {self._lists}" if self._lists > 1 else ""
        return f"item {block.label}{outer}{which}{self._opening}"

    def _opens(self, opening: str) -> None:
        """What stands before the next list."""
        self._opening, self._items, self._lists = opening, [], 1


def is_changed(clause: Clause) -> bool:
    """Whether anything in a clause differs but its number."""
    return bool(clause.move) or not all(is_same(p) or is_front_sheet(p) for p in clause.parts)
