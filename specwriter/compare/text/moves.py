"""Single blocks that stand elsewhere, word for word: removed here and added there."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import replace

from specwriter.compare.text.blocks import key_of, match_blocks
from specwriter.compare.text.pairs import Added, Clause, Part, Removed
from specwriter.reading import Paragraph

_LEAST = 3
"""Words that a paragraph must have to be known again elsewhere."""


def with_moves(clauses: Sequence[Clause], first: int) -> tuple[Clause, ...]:
    """The clauses, with each block that moved by itself marked on both sides.

    ``first`` is the number of the first such move. Only what stands once on each side is taken:
    of two equal paragraphs nobody can say which of them moved.
    """
    gone = Counter(_key(part) for part in _alone(clauses, Removed))
    come = Counter(_key(part) for part in _alone(clauses, Added))
    moved = [key for key, times in gone.items() if times == 1 and come.get(key) == 1]
    numbers = {key: number for number, key in enumerate(moved, start=first)}
    if not numbers:
        return tuple(clauses)
    return tuple(
        replace(clause, parts=tuple(_marked(part, numbers) for part in clause.parts))
        for clause in clauses
    )


def beside_again(origin: Clause, clause: Clause) -> Clause:
    """A clause that moved, its old and its new side laid side by side as one that stayed."""
    gone = [part.block for part in origin.parts if isinstance(part, Removed)]
    come = [part.block for part in clause.parts if isinstance(part, Added)]
    alone = {
        id(part.block): part.move
        for part in (*origin.parts, *clause.parts)
        if isinstance(part, Removed | Added) and part.move != clause.move
    }
    parts = tuple(
        replace(part, move=alone.get(id(part.block), 0))
        if isinstance(part, Removed | Added)
        else part
        for part in match_blocks(gone, come)
    )
    return Clause(old=origin.old, new=clause.new, parts=parts, move=clause.move)


def _alone(
    clauses: Sequence[Clause], kind: type[Removed] | type[Added]
) -> Iterator[Removed | Added]:
    for clause in clauses:
        for part in clause.parts:
            if isinstance(part, kind) and not part.move and _is_known_again(part):
                yield part


def _is_known_again(part: Removed | Added) -> bool:
    block = part.block
    if not isinstance(block, Paragraph) or block.heading:
        return False
    return len(block.text.split()) >= _LEAST


def _key(part: Removed | Added) -> object:
    return key_of(part.block)


def _marked(part: Part, numbers: dict[object, int]) -> Part:
    if isinstance(part, Removed | Added) and not part.move and _is_known_again(part):
        return replace(part, move=numbers.get(_key(part), 0))
    return part
