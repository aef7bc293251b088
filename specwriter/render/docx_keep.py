"""Which blocks stay on the page of what follows them, so that no line of sense stands alone."""

from __future__ import annotations

from collections.abc import Sequence

from specwriter.assemble.document import Block, Document, ListItem, Paragraph

_LINE = 90
"""Letters of a line of text, at most."""


def last_blocks(document: Document) -> tuple[Block, ...]:
    """The blocks that the closing line takes along.

    The last of all; and where its clause is that one paragraph, the end of the clause before,
    so that the last page holds more than a line.
    """
    clauses = [clause for part in document.parts for clause in part.clauses if clause.blocks]
    ends = [clause.blocks[-1] for clause in clauses[-2:]]
    single = bool(clauses) and len(clauses[-1].blocks) == 1
    both = single and all(isinstance(each, Paragraph) for each in ends)
    return tuple(ends if both else ends[-1:]) if document.closing else ()


def stays(blocks: Sequence[Block], place: int) -> bool:
    """True for a line that leads in a list, and for two items of a list.

    Those are the first and the last but one, so that no single line of a list stands alone.
    """
    block, before, rest = blocks[place], blocks[:place], blocks[place + 1 :]
    if not rest or not isinstance(rest[0], ListItem):
        return False
    if isinstance(block, ListItem):
        last_but_one = len(rest) == 1 or not isinstance(rest[1], ListItem)
        first = bool(before) and isinstance(before[-1], Paragraph) and _is_line(before[-1])
        return (last_but_one and _is_line(rest[0])) or (first and _is_line(block))
    return isinstance(block, Paragraph) and _is_line(block)


def _is_line(block: Paragraph | ListItem) -> bool:
    """True for a text of about a line.

    A longer one may part from its list: kept with both its heading and its list, one office
    program leaves the heading alone at the foot of the page.
    """
    return sum(len(run.text) for run in block.runs) <= _LINE
