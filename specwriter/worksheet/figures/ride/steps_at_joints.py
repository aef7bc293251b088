"""Roughness that steps at the joints make, and the step that a limit leaves for each."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from specwriter.model import Area, Job
from specwriter.trade.formula import Formula
from specwriter.trade.ride import faulting, steps
from specwriter.worksheet.figure import Line
from specwriter.worksheet.inputs import Given, of_area, of_node, of_site
from specwriter.worksheet.scale import CUT, ROUGHNESS
from specwriter.worksheet.sheet import Sheet, areas

_SOURCE = "project calculation with the quarter-car of ASTM E1926"
MADE = Formula(
    text="roughness = step × what a step of one unit at every joint makes at that spacing",
    source=_SOURCE,
    validity="equal steps at every joint, slabs tilted between them, nothing else rough",
)
MODELLED = Formula(
    text=f"roughness = {faulting.COEFFICIENT} × step / joint spacing",
    source="mechanistic-empirical design, NCHRP 1-37A and 1-40D, from memory, unverified; the 2008 "
    "manual of practice prints 0.4929, which the quarter-car does not support",
    validity="jointed plain concrete; a chord through mid-range: too much for small steps on a "
    "normal surface, too little for large ones",
)
LEFT = Formula(
    text="step = limit / what a step of one unit at every joint makes at that spacing",
    source=_SOURCE,
    validity="equal steps and an otherwise perfect surface: any other roughness leaves less",
)


def figures(job: Job) -> Iterator[Line]:
    """Lines of each area that limits a roughness index, where the joints have a spacing."""
    for area, sheet in areas(job):
        ride = area.smoothness
        if ride is not None and ride.index != "PI" and ride.limit is not None:
            yield from _lines(sheet.job, area, sheet)


def _lines(job: Job, area: Area, sheet: Sheet) -> Iterator[Line]:
    spacing, existing = of_site(job, "joint_spacing"), of_site(job, "existing_faulting")
    allowed = of_node(area, "joint_match", "step left at a joint")
    if isinstance(existing, Given):
        title = "roughness of the existing faulting"
        yield sheet.figure(title, MADE, ROUGHNESS, (existing, spacing), _made)
    if isinstance(allowed, Given):
        title = "roughness of the step allowed at every joint"
        yield sheet.figure(title, MADE, ROUGHNESS, (allowed, spacing), _made)
        title = "the same by the published model of faulting"
        yield sheet.figure(title, MODELLED, ROUGHNESS, (allowed, spacing), _modelled)
    needs = (of_area(area, "smoothness.limit"), spacing)
    title = "step at every joint that uses up the limit alone"
    yield sheet.figure(title, LEFT, CUT, needs, _left, as_one=True)


def _made(step: Fraction, spacing: Fraction) -> float:
    return float(step) * steps.saw_tooth(float(spacing))


def _modelled(step: Fraction, spacing: Fraction) -> float:
    return faulting.modelled(float(step), float(spacing))


def _left(limit: Fraction, spacing: Fraction) -> float:
    return steps.affordable_step(float(limit), 0.0, float(spacing))
