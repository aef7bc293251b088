"""Passes of the head over a lane, and the width that they cover."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from specwriter.model import Area, Job
from specwriter.quantity import Interval
from specwriter.trade import coverage
from specwriter.worksheet.figure import Line
from specwriter.worksheet.inputs import Given, Missing, of_area, of_site
from specwriter.worksheet.scale import NUMBER, WIDTH
from specwriter.worksheet.sheet import Sheet, areas, evidence_of

TITLE = "passes over a lane"
_ACROSS = ("transverse_grooving", "runway_grooving")
"""Textures whose head moves across: a lane takes no passes side by side."""


def figures(job: Job) -> Iterator[Line]:
    """For the head and the overlap at the limits that the job states, each taken as written."""
    for area, sheet in areas(job):
        if area.texture not in _ACROSS:
            yield from _lines(sheet.job, area, sheet)


def _lines(job: Job, area: Area, sheet: Sheet) -> Iterator[Line]:
    needs = (
        of_site(job, "lane_width"),
        of_area(area, "equipment.head_width"),
        of_area(area, "coverage.overlap"),
    )
    missing = [each.name for each in needs if isinstance(each, Missing)]
    if missing:
        yield sheet.waiting(TITLE, "not given: " + ", ".join(missing))
        return
    given = [each for each in needs if isinstance(each, Given)]
    lane, overlap = given[0].as_one().high, given[2].as_one().high
    head = given[1].as_one().low
    assert lane is not None
    assert head is not None
    assert overlap is not None
    if overlap >= head:
        yield sheet.waiting(TITLE, "the overlap is not below the width of the head")
        return
    at = evidence_of(given)
    note = "the narrowest head and the widest overlap that are allowed"
    count = coverage.passes_needed(lane, head, overlap)
    is_open = any(not each.interval.is_point for each in given[1:])
    number = Interval(None if is_open else Fraction(count), Fraction(count))
    yield sheet.of_span(TITLE, coverage.PASSES, NUMBER, number, at, note)
    for passes in sorted({max(1, count - 1), count}):
        covered = coverage.width_covered(passes, head, overlap)
        left = coverage.strip_left(lane, passes, head, overlap)
        rest = "bare strip left" if left else "cut beyond the lane"
        span = Interval(covered, covered)
        title = f"width covered by {passes} {'pass' if passes == 1 else 'passes'}"
        over = WIDTH.text(Interval(abs(lane - covered), abs(lane - covered)), job)
        yield sheet.of_span(title, coverage.COVERED, WIDTH, span, at, f"{rest}: {over}")
