"""A whole entry (an area, a test, a pay item, a stretch) in one line."""

from __future__ import annotations

from specwriter.compare.change import Side
from specwriter.compare.leaf import Leaf, leaves
from specwriter.model import Area, Node


def side_of(part: Leaf | Node | None) -> Side | None:
    """Path and wording of a value or of a whole entry."""
    if part is None:
        return None
    written = part.written if isinstance(part, Leaf) else in_one_line(part)
    return Side(path=part.path, written=written)


def in_one_line(node: Node) -> str:
    """What an entry says, in the order of its keys; an area by its texture and size alone."""
    if isinstance(node, Area):
        texture, place = (word.replace("_", " ") for word in (node.texture, node.place))
        return f"{node.id}: {texture}, {place}, {sum(1 for _ in leaves(node))} values"
    start = len(node.path) + 1
    return "; ".join(
        f"{leaf.path[start:].replace('_', ' ')} {leaf.written}" for leaf in leaves(node)
    )
