"""Parts in the order and shape in which an office program shows them best.

Three habits of office programs shape it (found by trial, LibreOffice 7.4):

- an item that changed its list cannot be rejected back into its own: it goes and comes;
- a removed table beside an added one would become one table: an empty paragraph parts them;
- a paragraph that comes or goes as a whole right before a numbered one takes that one's number
  away. So a paragraph that goes and one that comes in its place are written as one paragraph with
  other words; and where a paragraph stays before, it lends its mark: its own end comes or goes,
  and the last of the others keeps the end that was there.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass

from specwriter.compare.redline.lists import Lists
from specwriter.compare.redline.revision import Change
from specwriter.compare.text import Added, Match, MatchedTable, Part, Removed, Rewritten, Span
from specwriter.reading import Paragraph, Table


@dataclass(frozen=True, slots=True)
class Placed:
    """A part with what is said of its paragraph mark; ``None``: it stays."""

    part: Part
    mark: Change | None = None


def laid_out(parts: Iterable[Part], lists: Lists) -> list[Placed]:
    """The parts to write, from top to bottom."""
    split = list(_replaced(list(_unlisted(parts, lists)), lists))
    return _with_lent_marks(list(_parted(split)), lists)


def _unlisted(parts: Iterable[Part], lists: Lists) -> Iterator[Part]:
    for part in parts:
        if isinstance(part, Match | Rewritten) and not lists.fit(part.old, part.new):
            yield Removed(block=part.old)
            yield Added(block=part.new)
        else:
            yield part


def _replaced(parts: Sequence[Part], lists: Lists) -> Iterator[Part]:
    """Paragraphs that go and those that come in their place, as one paragraph each."""
    place = 0
    while place < len(parts):
        gone = _run(parts, place, Removed)
        come = _run(parts, place + len(gone), Added)
        for old, new in zip(gone, come, strict=False):
            yield from _replacement(old, new, lists)
        shared = min(len(gone), len(come))
        yield from (*gone[shared:], *come[shared:])
        place += len(gone) + len(come)
        if not gone and not come:
            yield parts[place]
            place += 1


def _run(parts: Sequence[Part], start: int, kind: type[Removed] | type[Added]) -> list[Part]:
    end = start
    while end < len(parts) and isinstance(parts[end], kind) and _is_plain(parts[end]):
        end += 1
    return list(parts[start:end])


def _is_plain(part: Part) -> bool:
    """A paragraph that comes or goes and did not move."""
    if not isinstance(part, Removed | Added):
        return False
    return isinstance(part.block, Paragraph) and not part.move


def _replacement(old: Part, new: Part, lists: Lists) -> tuple[Part, ...]:
    was, now = _block(old), _block(new)
    alike = was.style == now.style and was.heading == now.heading == 0
    if not alike or was.section or not lists.fit(was, now):
        return old, new
    spans = (Span("removed", was.pieces), Span("added", now.pieces))
    return (Rewritten(old=was, new=now, spans=tuple(each for each in spans if each.pieces)),)


def _block(part: Part) -> Paragraph:
    assert isinstance(part, Removed | Added)
    assert isinstance(part.block, Paragraph)
    return part.block


def _parted(parts: Iterable[Part]) -> Iterator[Part]:
    last: Part | None = None
    for part in parts:
        sides = _table_side(last), _table_side(part)
        if None not in sides and sides[0] != sides[1]:
            yield Added(block=Paragraph(pieces=()))
        yield part
        last = part


def _table_side(part: Part | None) -> str | None:
    if isinstance(part, MatchedTable):
        return "both"
    if isinstance(part, Removed | Added) and isinstance(part.block, Table):
        return type(part).__name__
    return None


def _with_lent_marks(parts: Sequence[Part], lists: Lists) -> list[Placed]:
    marks = [_own_mark(part) for part in parts]
    place = 1
    while place < len(parts):
        kind = type(parts[place])
        end = place
        while end < len(parts) and type(parts[end]) is kind and _is_plain(parts[end]):
            end += 1
        if end > place and _may_lend(parts[place - 1], parts[end - 1], lists):
            marks[place - 1], marks[end - 1] = marks[end - 1], None
        place = max(end, place + 1)
    return [Placed(part, mark) for part, mark in zip(parts, marks, strict=True)]


def _own_mark(part: Part) -> Change | None:
    if isinstance(part, Removed):
        return "moveFrom" if part.move else "del"
    if isinstance(part, Added):
        return "moveTo" if part.move else "ins"
    return None


def _may_lend(before: Part, last: Part, lists: Lists) -> bool:
    """Whether the paragraph before is set like the last one, so that they may change ends."""
    if not isinstance(before, Match | Rewritten) or not isinstance(last, Removed | Added):
        return False
    assert isinstance(last.block, Paragraph)
    properties = last.block.properties
    if isinstance(last, Removed):
        properties = lists.old_properties(properties)
    kept = before.new
    alike = kept.properties == properties and kept.mark_form == last.block.mark_form
    return alike and not kept.section and not last.block.section
