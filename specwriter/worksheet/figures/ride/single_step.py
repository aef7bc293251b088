"""Localized roughness of a single step against the limit on short rough places."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from specwriter.model import Job
from specwriter.trade.formula import Formula
from specwriter.trade.ride import steps
from specwriter.worksheet.figure import Line
from specwriter.worksheet.inputs import of_node
from specwriter.worksheet.scale import CUT, ROUGHNESS
from specwriter.worksheet.sheet import areas

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


def figures(job: Job) -> Iterator[Line]:
    """Lines of each area that limits localized roughness."""
    for area, sheet in areas(job):
        local = area.smoothness.localized if area.smoothness else None
        if local is None:
            continue
        base = of_node(local, "base", "base of localized roughness")
        limit = of_node(local, "limit", "limit of localized roughness")
        step = of_node(area, "joint_match", "step left at a joint")
        title = "localized roughness of the step allowed at a joint"
        yield sheet.figure(title, MADE, ROUGHNESS, (step, base), _made)
        title = "single step that reaches the localized limit"
        yield sheet.figure(title, LEFT, CUT, (limit, base), _left, as_one=True)


def _made(step: Fraction, base: Fraction) -> float:
    return float(step) * steps.localized(float(base))


def _left(limit: Fraction, base: Fraction) -> float:
    return float(limit) / steps.localized(float(base))
