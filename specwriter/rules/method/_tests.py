"""The tests of an area."""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.model import Area
from specwriter.model.results import Test

_RESULTS = ("cross_slope", "straightedge", "smoothness", "texture_depth", "friction", "noise")


def tests(area: Area) -> Iterator[Test]:
    """Every test that an area states, those under its results last."""
    yield from area.testing.values()
    for key in _RESULTS:
        result = getattr(area, key)
        if result is not None and result.test is not None:
            yield result.test
