"""Spacing of the grooves, centre to centre, by every route that the job opens."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import Any

from specwriter.model import Job
from specwriter.trade import groove_geometry
from specwriter.trade.formula import Formula, identity
from specwriter.worksheet.figure import Line
from specwriter.worksheet.inputs import READ_AS_BOTH, Given, of_area, only_thickness
from specwriter.worksheet.scale import CUT
from specwriter.worksheet.sheet import areas

TITLE = "groove spacing, centre to centre"

OF_ONE = identity("spacing = core + spacer, the segment read as the core too")

_ROUTES: tuple[tuple[Formula, tuple[str, ...], Callable[..., Any]], ...] = (
    (identity("spacing = 12 in / grooves per foot"), ("groove.per_foot",), lambda n: 1 / n),
    (identity("spacing = 1000 mm / grooves per metre"), ("groove.per_metre",), lambda n: 1 / n),
    (identity("spacing = groove + land"), ("groove.width", "land.width"), groove_geometry.spacing),
    (
        identity("spacing = groove + clear gap"),
        ("groove.width", "groove.clear_gap"),
        groove_geometry.spacing,
    ),
    (
        identity("spacing = core + spacer"),
        ("blade.core", "blade.spacer"),
        groove_geometry.pitch_of_blades,
    ),
    (
        identity("spacing = segment + land"),
        ("blade.segment", "land.width"),
        groove_geometry.spacing,
    ),
)


def figures(job: Job) -> Iterator[Line]:
    """One line for each route; none where the spacing is stated and nothing else leads to it."""
    for area, sheet in areas(job):
        found = False
        segment = of_area(area, "blade.segment")
        if only_thickness(area, "blade") == segment:
            found = True
            needs = [segment, of_area(area, "blade.spacer")]
            compute = groove_geometry.pitch_of_blades
            yield sheet.figure(TITLE, OF_ONE, CUT, needs, compute, note=READ_AS_BOTH)
        for formula, paths, compute in _ROUTES:
            needs = [of_area(area, path) for path in paths]
            if all(isinstance(each, Given) for each in needs):
                found = True
                yield sheet.figure(TITLE, formula, CUT, needs, compute)
        if not found and not isinstance(of_area(area, "groove.spacing"), Given):
            yield sheet.waiting(TITLE, "not given: groove spacing, or what makes it")
