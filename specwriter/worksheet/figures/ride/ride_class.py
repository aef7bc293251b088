"""Class of ride of the existing surface."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from specwriter.model import Job
from specwriter.quantity import Interval
from specwriter.trade.ride.classes import CLASSES, ride_class
from specwriter.worksheet.figure import Line
from specwriter.worksheet.inputs import Given, of_site
from specwriter.worksheet.scale import ROUGHNESS
from specwriter.worksheet.sheet import Sheet


def figures(job: Job) -> Iterator[Line]:
    """One line for the job, where the site states its roughness."""
    existing = of_site(job, "existing_mri")
    if not isinstance(existing, Given):
        return
    span = existing.as_one()
    ends = [ride_class(float(end)) for end in (span.low, span.high) if end is not None]
    words = " to ".join(dict.fromkeys(ends))
    line = Sheet(job).of_span(
        "ride class of the existing surface",
        CLASSES,
        ROUGHNESS,
        Interval(None, None),
        existing.evidence,
    )
    yield replace(line, value=words, unit="")
