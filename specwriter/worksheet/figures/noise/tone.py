"""Tone of a uniform pattern of transverse grooves at the posted speed."""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.model import Job
from specwriter.trade import sound
from specwriter.worksheet.figure import Line
from specwriter.worksheet.inputs import of_site, spacing
from specwriter.worksheet.scale import HERTZ
from specwriter.worksheet.sheet import areas


def figures(job: Job) -> Iterator[Line]:
    """One line for each area of transverse grooves that are not said to be random."""
    for area, sheet in areas(job):
        pattern = area.groove.pattern if area.groove else None
        if area.texture == "transverse_grooving" and pattern != "random":
            needs = (of_site(sheet.job, "posted_speed"), spacing(area))
            yield sheet.figure("tone of the pattern", sound.TONE, HERTZ, needs, sound.tone)
