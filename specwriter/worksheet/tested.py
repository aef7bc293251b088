"""The tests of an area, and the property that each of them judges."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from specwriter.model import Area
from specwriter.model.results import Test
from specwriter.worksheet.inputs import Input, Missing, of_node

_NOUNS = ("cross_slope", "straightedge", "smoothness", "texture_depth", "friction", "noise")
_NOTHING_JOINED = Missing(name="remainder that joins the lot before")


@dataclass(frozen=True, slots=True)
class Tested:
    """A test, and the property that it judges."""

    name: str
    test: Test
    joined: Input = _NOTHING_JOINED
    """Remainder of a lane that joins the lot before it."""


def tests_of(area: Area) -> Iterator[Tested]:
    """Every test of an area, in the order of the job file."""
    for noun in _NOUNS:
        node = getattr(area, noun)
        if node is not None and node.test is not None:
            joined = of_node(node, "partial_segment", "remainder that joins the lot before")
            yield Tested(noun.replace("_", " "), node.test, joined)
    for name, test in area.testing.items():
        yield Tested(name.replace("_", " "), test)
