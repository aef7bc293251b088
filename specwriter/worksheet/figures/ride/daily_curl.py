"""Roughness that comes and goes with the curl of the slabs over a day."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from specwriter.model import Job
from specwriter.trade.formula import Formula
from specwriter.trade.ride.curl import curl
from specwriter.worksheet.figure import Line
from specwriter.worksheet.inputs import of_site
from specwriter.worksheet.scale import ROUGHNESS
from specwriter.worksheet.sheet import Sheet

FORMULA = Formula(
    text="roughness = curl × what a curl of one unit makes at that spacing of joints",
    source="project calculation with the quarter-car of ASTM E1926",
    validity="parabolic slabs that all curl alike; grinding does not take it away",
)


def figures(job: Job) -> Iterator[Line]:
    """One line for the job, where the site states a curl."""
    if job.conditions.daily_curl is not None:
        needs = (of_site(job, "daily_curl"), of_site(job, "joint_spacing"))
        yield Sheet(job).figure("roughness of the daily curl", FORMULA, ROUGHNESS, needs, _made)


def _made(height: Fraction, spacing: Fraction) -> float:
    return float(height) * curl(float(spacing))
