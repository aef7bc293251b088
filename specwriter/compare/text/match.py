"""Two documents → their blocks side by side: by clause, then by paragraph, then by word."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from itertools import count
from zlib import crc32

from specwriter.compare.text.blocks import match_blocks
from specwriter.compare.text.moves import with_moves
from specwriter.compare.text.notes import Note, note_pairs
from specwriter.compare.text.pairs import Added, Beside, Clause, Part, Removed, TextMatch, is_same
from specwriter.compare.text.sections import Section, pair_sections, sections_of
from specwriter.compare.text.sequence import heaviest_rise
from specwriter.reading import Margin, Text

_CHANGED = 10**7
"""More words than any clause has."""

_CLAUSE = 10**12
"""More than all clauses of a document weigh together."""


@dataclass(frozen=True, slots=True)
class _Plan:
    """Which section of the old document is which of the new one, and what moved."""

    pairs: Mapping[int, int]
    moved: Mapping[int, int]
    """Old section → number of the move."""


def compare_texts(old: Text, new: Text) -> TextMatch:
    """The two documents side by side; equal texts give nothing but matches."""
    before, after = sections_of(old.blocks), sections_of(new.blocks)
    plan = _plan(before, after)
    clauses = tuple(_clauses(before, after, plan))
    clauses = with_moves(clauses, first=len(plan.moved) + 1)
    parts = (part for clause in clauses for part in clause.parts)
    notes = _notes(note_pairs(parts), old.margins, new.margins)
    return TextMatch(
        clauses=clauses,
        margins=(*_margins(old.margins, new.margins), *notes),
        shows_looks=bool(old.namespaces and new.namespaces),
    )


def _margins(old: Sequence[Margin], new: Sequence[Margin]) -> Iterator[Beside]:
    """Headers and footers that differ, by their names."""
    was = {each.name: each for each in old if not each.note}
    now = {each.name: each for each in new if not each.note}
    for name in [*now, *(name for name in was if name not in now)]:
        yield from _beside(was.get(name), now.get(name))


def _notes(
    pairs: Iterable[tuple[Note | None, Note | None]], old: Sequence[Margin], new: Sequence[Margin]
) -> Iterator[Beside]:
    """Notes that differ."""
    was = {each.note: each for each in old if each.note}
    now = {each.note: each for each in new if each.note}
    for before, after in pairs:
        yield from _beside(was.get(before) if before else None, now.get(after) if after else None)


def _beside(old: Margin | None, new: Margin | None) -> Iterator[Beside]:
    one = new or old
    parts = match_blocks(old.blocks if old else (), new.blocks if new else ())
    if one is None or all(map(is_same, parts)):
        return
    # A note that comes or goes does so with the reference to it.
    is_marked = new is not None and (old is not None or new.note is None)
    part = new.part if new and is_marked else ""
    note = new.note[1] if new and new.note and is_marked else ""
    yield Beside(name=one.name, part=part, parts=parts, note=note)


def _plan(old: Sequence[Section], new: Sequence[Section]) -> _Plan:
    pairs = pair_sections(old, new)
    rows = sorted(pairs)
    weights = [_weight(old[i], new[pairs[i]]) for i in rows]
    stays = {rows[k] for k in heaviest_rise([pairs[i] for i in rows], weights)}
    numbers = count(1)
    moved = {i: next(numbers) for i in rows if i not in stays}
    return _Plan(pairs, moved)


def _weight(old: Section, new: Section) -> int:
    """How much speaks for saying that a clause stayed.

    As few clauses as can be have moved; of equally many, those that did not change, for what
    changed in its place is marked word by word; of these the shorter ones; of equally short ones
    always the same, whichever document comes first.
    """
    changed = _CHANGED * (old.words != new.words)
    return (_CLAUSE + changed + old.weight + new.weight << 32) + _lot(old, new)


def _lot(old: Section, new: Section) -> int:
    words = sorted((old.title, new.title))
    return crc32(" ".join(words).encode())


def _clauses(old: Sequence[Section], new: Sequence[Section], plan: _Plan) -> Iterator[Clause]:
    back = {j: i for i, j in plan.pairs.items()}
    done = 0
    for j, section in enumerate(new):
        i = back.get(j)
        if i is None:
            yield _added(section)
        elif i in plan.moved:
            yield _moved_to(old[i], section, plan.moved[i])
        else:
            yield from (_removed(old[k], new, plan, k) for k in range(done, i) if _alone(k, plan))
            done = i + 1
            yield _both(old[i], section)
    yield from (_removed(old[k], new, plan, k) for k in range(done, len(old)) if _alone(k, plan))


def _alone(i: int, plan: _Plan) -> bool:
    return i not in plan.pairs or i in plan.moved


def _both(old: Section, new: Section) -> Clause:
    return Clause(old=old.heading, new=new.heading, parts=match_blocks(old.blocks, new.blocks))


def _added(section: Section) -> Clause:
    parts = tuple(Added(block=block) for block in section.blocks)
    return Clause(old=None, new=section.heading, parts=parts)


def _removed(section: Section, new: Sequence[Section], plan: _Plan, i: int) -> Clause:
    move = plan.moved.get(i, 0)
    parts: tuple[Part, ...]
    if move:
        whole = match_blocks(section.blocks, new[plan.pairs[i]].blocks)
        parts = tuple(_going(whole, move))
    else:
        parts = tuple(Removed(block=block) for block in section.blocks)
    return Clause(old=section.heading, new=None, parts=parts, move=move)


def _moved_to(old: Section, new: Section, move: int) -> Clause:
    parts = tuple(_coming(match_blocks(old.blocks, new.blocks), move))
    return Clause(old=None, new=new.heading, parts=parts, move=move)


def _going(parts: Sequence[Part], move: int) -> Iterator[Part]:
    """The old side of a clause that moved."""
    for part in parts:
        if isinstance(part, Removed):
            yield part
        elif not isinstance(part, Added):
            spans = getattr(part, "spans", ())
            yield Removed(block=part.old, move=move, spans=spans)


def _coming(parts: Sequence[Part], move: int) -> Iterator[Part]:
    """The new side of a clause that moved."""
    for part in parts:
        if isinstance(part, Added):
            yield part
        elif not isinstance(part, Removed):
            spans = getattr(part, "spans", ())
            yield Added(block=part.new, move=move, spans=spans)
