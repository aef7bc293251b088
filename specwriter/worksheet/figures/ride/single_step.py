"""Localized roughness of a single step, and of a bump under the template."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from specwriter.model import Job
from specwriter.quantity import Interval
from specwriter.trade.formula import Formula
from specwriter.trade.ride import MILE, bumps, steps
from specwriter.worksheet.figure import Line
from specwriter.worksheet.inputs import Given, Input, Missing, of_node
from specwriter.worksheet.scale import CUT, ROUGHNESS
from specwriter.worksheet.sheet import Sheet, areas

_SOURCE = "project calculation with the quarter-car of ASTM E1926"
_VALIDITY = "one step on an otherwise perfect surface"
MADE = Formula(
    text="highest roughness over the base = step × what a single step of one unit makes",
    source=_SOURCE,
    validity=_VALIDITY,
)
LEFT = Formula(
    text="step = localized limit / what a single step of one unit makes over the base",
    source=_SOURCE,
    validity=f"{_VALIDITY}: any other roughness leaves less",
)
ADDED = Formula(
    text="roughness added = step × suspension travel of a step of one unit / 0.1 mi",
    source=_SOURCE,
    validity=f"{_VALIDITY}; on a rough one a step adds less",
)
OF_A_BUMP = Formula(
    text="localized roughness = height × 456 to 751 in/mi for an inch",
    source=f"{_SOURCE}, over a base of 25 ft",
    validity="one rounded bump of 3 to 25 ft (1 to 7.6 m) on an otherwise perfect surface",
)


def figures(job: Job) -> Iterator[Line]:
    """Lines of each area that limits localized roughness or bumps."""
    for area, sheet in areas(job):
        local = area.smoothness.localized if area.smoothness else None
        if local is None:
            continue
        base = of_node(local, "base", "base of localized roughness")
        limit = of_node(local, "limit", "limit of localized roughness")
        if local.limit is not None and local.limit.dimension == "length":
            yield _of_bump(sheet, limit)
            continue
        step = of_node(area, "joint_match", "step left at a joint")
        if isinstance(step, Given):
            title = "what one step allowed at a joint adds to 0.1 mi"
            yield sheet.figure(title, ADDED, ROUGHNESS, (step,), _added)
        title = "localized roughness of the step allowed at a joint"
        yield sheet.figure(title, MADE, ROUGHNESS, (step, base), _made)
        title = "single step that reaches the localized limit"
        yield sheet.figure(title, LEFT, CUT, (limit, base), _left, as_one=True)


def _of_bump(sheet: Sheet, height: Input) -> Line:
    title = "localized roughness of a bump that just meets the template"
    if isinstance(height, Missing):
        return sheet.waiting(title, f"not given: {height.name}")
    most = float(height.as_one().high or 0)
    ends = (Fraction(most * each) for each in (bumps.LEAST_LOCALIZED, bumps.MOST_LOCALIZED))
    return sheet.of_span(title, OF_A_BUMP, ROUGHNESS, Interval(*ends), height.evidence)


def _made(step: Fraction, base: Fraction) -> float:
    return float(step) * steps.localized(float(base))


def _added(step: Fraction) -> float:
    return float(step) * steps.isolated(0.1 * MILE)


def _left(limit: Fraction, base: Fraction) -> float:
    return float(limit) / steps.localized(float(base))
