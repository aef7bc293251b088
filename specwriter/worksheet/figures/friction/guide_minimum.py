"""A guide minimum of the skid number for the posted speed, from memory."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from specwriter.model import Job
from specwriter.trade import friction
from specwriter.worksheet.figure import Line
from specwriter.worksheet.inputs import of_site
from specwriter.worksheet.scale import SKID
from specwriter.worksheet.sheet import areas

_MPH = Fraction("1609.344") / 3600


def figures(job: Job) -> Iterator[Line]:
    """One line for each area that states a friction number."""
    for area, sheet in areas(job):
        if area.friction is not None and area.place not in ("runway", "taxiway"):
            yield sheet.figure(
                "guide minimum of the skid number at 40 mph",
                friction.GUIDE_MINIMUM,
                SKID,
                (of_site(sheet.job, "posted_speed"),),
                lambda speed: friction.guide_minimum(round(float(speed / _MPH), 6)),
                note="from memory: shown beside the limit, never against it",
                as_one=True,
            )
