"""Parts in the order and shape in which an office program shows them best.

Five habits of office programs shape it (found by trial, LibreOffice 7.4):

- an item that changed its list finds back into its own by its settings, not by its end;
- a removed table beside an added one would become one table: an empty paragraph parts them;
- a paragraph that comes or goes as a whole right before a numbered one takes that one's number
  away. So a paragraph that goes and one that comes in its place are written as one paragraph with
  other words; and where a paragraph stays before, it lends its mark: its own end comes or goes,
  and the last of the others keeps the end that was there;
- a paragraph of which some words moved and others come is no longer told from the one behind it:
  in a clause that moved, a paragraph with other words goes there and comes here;
- of paragraphs that come or go right before a table one stays behind, empty: the first of those
  that come, the last of those that go. There it must be without a number.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace

from specwriter.compare.redline.lists import Lists
from specwriter.compare.redline.revision import Change
from specwriter.compare.text import Added, Match, MatchedTable, Part, Removed, Rewritten, Span
from specwriter.compare.text.blocks import level
from specwriter.reading import Paragraph, Table


@dataclass(frozen=True, slots=True)
class Placed:
    """A part with what is said of its paragraph mark; ``None``: it stays.

    ``bared`` is true for a paragraph that may stay behind: it then has no style and no number.
    ``before`` is how the paragraph was set, where that is another list.
    """

    part: Part
    mark: Change | None = None
    bared: bool = False
    before: str | None = None


def laid_out(parts: Iterable[Part], lists: Lists) -> list[Placed]:
    """The parts to write, from top to bottom."""
    split = list(_replaced(list(parts)))
    return _bared(_with_lent_marks(list(_parted(split)), lists))


def _replaced(parts: Sequence[Part]) -> Iterator[Part]:
    """Paragraphs that go and those that come in their place, as one paragraph each."""
    place = 0
    while place < len(parts):
        gone = _run(parts, place, Removed)
        come = _run(parts, place + len(gone), Added)
        for old, new in zip(gone, come, strict=False):
            yield from _replacement(old, new)
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


def _replacement(old: Part, new: Part) -> tuple[Part, ...]:
    was, now = _block(old), _block(new)
    alike = was.style == now.style and was.heading == now.heading == 0
    if not alike or was.section or level(was) != level(now):
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
    return [
        Placed(part, mark, before=_other_list(part, lists))
        for part, mark in zip(parts, marks, strict=True)
    ]


def _other_list(part: Part, lists: Lists) -> str | None:
    """The settings of the old paragraph, where it counts in another list than the new one."""
    if not isinstance(part, Match | Rewritten) or lists.fit(part.old, part.new):
        return None
    return lists.old_properties(part.old.properties)


def _own_mark(part: Part) -> Change | None:
    if isinstance(part, Removed):
        return "moveFrom" if _moved_as_it_was(part) else "del"
    if isinstance(part, Added):
        return "moveTo" if _moved_as_it_was(part) else "ins"
    return None


def _moved_as_it_was(part: Removed | Added) -> bool:
    """Tables have no mark for a move, and a paragraph takes one mark from its start to its end."""
    return bool(part.move) and not part.spans and isinstance(part.block, Paragraph)


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


def _bared(placed: Sequence[Placed]) -> list[Placed]:
    """The same, with the numbered paragraphs marked that a table behind them would keep."""
    found = list(placed)
    for place, each in enumerate(placed):
        if not _is_table(each.part) or not place or placed[place - 1].mark is None:
            continue
        at = place - 1
        while at and _comes(placed[at]) and _comes(placed[at - 1]):
            at -= 1
        if _is_numbered(placed[at].part):
            found[at] = replace(placed[at], bared=True)
    return found


def _comes(placed: Placed) -> bool:
    return placed.mark in ("ins", "moveTo") and not _is_table(placed.part)


def _is_table(part: Part) -> bool:
    return isinstance(getattr(part, "block", None), Table) or isinstance(part, MatchedTable)


def _is_numbered(part: Part) -> bool:
    block = getattr(part, "block", None)
    return isinstance(block, Paragraph) and block.list is not None and not block.section
