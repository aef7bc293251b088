"""Roughness that comes and goes with the curl of the slabs over a day."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from specwriter.model import Job, sites_of
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
    """One line for the job, or for the first area of each site, where a curl is stated."""
    for site in sites_of(job):
        if site.conditions.daily_curl is not None:
            area = None if site.areas == job.areas else next(iter(site.areas.values()))
            needs = (of_site(site, "daily_curl"), of_site(site, "joint_spacing"))
            sheet = Sheet(site, area)
            yield sheet.figure("roughness of the daily curl", FORMULA, ROUGHNESS, needs, _made)


def _made(height: Fraction, spacing: Fraction) -> float:
    return float(height) * curl(float(spacing))
