"""Slope of the cut where it runs out, and the gap that a straightedge finds there."""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.model import Job
from specwriter.trade import coverage
from specwriter.trade.formula import identity
from specwriter.worksheet.figure import Line
from specwriter.worksheet.inputs import Given, of_area
from specwriter.worksheet.scale import CUT, PERCENT
from specwriter.worksheet.sheet import areas

SLOPE = identity("slope = depth of removal / length of the run-out")


def figures(job: Job) -> Iterator[Line]:
    """Lines of each area whose cut runs out over a length."""
    for area, sheet in areas(job):
        run_out, edge = of_area(area, "coverage.feathering"), of_area(area, "straightedge.length")
        if not isinstance(run_out, Given):
            continue
        cut = of_area(area, "removal.depth")
        title = "slope of the run-out of the deepest cut"
        needs = (cut, run_out)
        yield sheet.figure(title, SLOPE, PERCENT, needs, lambda d, f: d / f, as_one=True)
        if isinstance(edge, Given):
            title = "gap under a straightedge across that run-out"
            compute, formula = coverage.gap_of_run_out, coverage.GAP_OF_RUN_OUT
            yield sheet.figure(title, formula, CUT, (cut, run_out, edge), compute, as_one=True)
